package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartingPackTest {
  @TempDir Path folder;

  @Test
  void isSoundAndSaysWhatIsToBeFilledIn() throws IOException, PackException {
    Path file = StartingPack.write(folder, "my-county");
    Path filled = Files.createDirectories(folder.resolve("filled/my-county")).resolve("pack.json");
    Files.writeString(filled, Files.readString(file).replace(" (to be filled in)", ""));
    // Its table shows a last row for any zone, and what is to be thought of there.
    assertEquals(
        List.of("table frost-depth"),
        Proof.of(PackLoader.loadForAuthor(filled.getParent().toString())).statements().stream()
            .map(statement -> statement.about())
            .toList());
    Pack pack = PackLoader.loadForAuthor(folder.resolve("my-county").toString());
    assertEquals("my-county", pack.id());
    assertEquals("My county (to be filled in)", pack.title());
    assertEquals(
        List.of(
            "my-county: note: its title is still \"My county (to be filled in)\", which pages"
                + " and notices print: write the real one, and look at its rules and sources,"
                + " which are invented",
            "my-county: note: its authority is still \"Whom to ask about these rules (to be"
                + " filled in)\", which pages and notices print: write the real one, and look at"
                + " its rules and sources, which are invented"),
        Proof.of(pack).statements().stream()
            .map(Statement::sentence)
            .filter(sentence -> sentence.contains(" is still "))
            .toList());
    assertTrue(Proof.of(pack).isClean(), "a pack to start from is whole");
    assertTrue(Files.readString(file).contains("\"rule-pack.schema.json\""));
    assertEquals(
        Files.readString(Path.of("rules/schema/rule-pack.schema.json")),
        Files.readString(file.resolveSibling("rule-pack.schema.json")));
  }

  @Test
  void neverWritesOverAnother() throws IOException {
    Path file = StartingPack.write(folder, "my-county");
    Files.writeString(file, "mine");
    assertThrows(FileAlreadyExistsException.class, () -> StartingPack.write(folder, "my-county"));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void aNameThatCannotBeOneIsRefused() {
    for (String bad : List.of("", "My County", "../up", "a--b", "-a", "a/b", "x".repeat(81))) {
      assertThrows(IllegalArgumentException.class, () -> StartingPack.write(folder, bad), bad);
    }
  }
}
