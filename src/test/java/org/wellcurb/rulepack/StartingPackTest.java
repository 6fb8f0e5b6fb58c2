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
  void isSoundAndClean() throws IOException, PackException {
    Path file = StartingPack.write(folder, "my-county");
    Pack pack = PackLoader.loadForAuthor(folder.resolve("my-county").toString());
    assertEquals("my-county", pack.id());
    assertEquals("My county (to be filled in)", pack.title());
    assertEquals(List.of(), Proof.of(pack).statements());
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
