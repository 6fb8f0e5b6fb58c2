package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Packs that load, with what a proof says of them: one for each kind of statement, beside its
 * golden {@code expected.txt}. Run with {@code -Dgoldens=rewrite} to write them anew.
 */
class DoubtfulPacksTest {
  private static final Path FOLDER = Path.of("src/test/resources/doubtful-packs");

  static List<String> packs() throws IOException {
    return PackFinder.names(FOLDER);
  }

  private static Proof proof(String name) throws PackException {
    return Proof.of(PackLoader.loadForAuthor(FOLDER.resolve(name).toString()));
  }

  @ParameterizedTest
  @MethodSource("packs")
  void saysWhatIsNotProved(String name) throws IOException, PackException {
    Proof proof = proof(name);
    String said =
        proof.summary()
            + "\n"
            + proof.statements().stream()
                .map(s -> s.sentence() + "\n")
                .collect(Collectors.joining());
    Path golden = FOLDER.resolve(name).resolve("expected.txt");
    if ("rewrite".equals(System.getProperty("goldens"))) {
      Files.writeString(golden, said);
    }
    assertEquals(Files.readString(golden), said, name);
  }

  @Test
  void aPackIsCleanWithNotesOnly() throws PackException {
    assertTrue(proof("clean").statements().isEmpty());
    assertTrue(proof("clean").isClean());
    assertTrue(proof("dates-with-years-between").isClean());
    assertFalse(proof("limit-with-one-side").isClean());
    assertFalse(proof("source-unused").isClean());
    assertFalse(proof("rules-that-contradict").isClean());
  }

  @Test
  void aPackIsCalledAsItsFolderIs(@TempDir Path folder) throws IOException, PackException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Files.copy(FOLDER.resolve("clean").resolve("pack.json"), other.resolve("pack.json"));
    Pack pack = PackLoader.loadForAuthor(other.toString());
    assertEquals("other", PackLoader.folder(other.toString()));
    assertEquals("other", PackLoader.folder(other.resolve("pack.json").toString()));
    assertEquals("", PackLoader.folder("common-practice"));
    assertEquals(
        List.of(
            "clean: doubtful: it stands in the folder other, by which packs built on it look for"
                + " it: mend one of the names"),
        Proof.of(pack, "other").statements().stream().map(Statement::sentence).toList());
    assertTrue(Proof.of(pack, "clean").isClean());
  }

  @Test
  void variancesAreNotSaidToBeInJsonAlone(@TempDir Path folder) throws IOException, PackException {
    Path source = FOLDER.resolve("rule-that-reads-the-log").resolve("pack.json");
    String text = Files.readString(source).replace("layers", "record.variances");
    Path pack = Files.createDirectory(folder.resolve("rule-that-reads-the-log"));
    Files.writeString(pack.resolve("pack.json"), text);
    Proof proof = Proof.of(PackLoader.loadForAuthor(pack.toString()));
    assertTrue(text.contains("known(record.variances)"));
    assertTrue(
        proof.statements().stream().noneMatch(s -> s.sentence().contains("only JSON")),
        proof.statements().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "An unofficial copy., an unofficial copy",
    "Second-hand., second-hand",
    "Its first day is inferred., inferred in part"
  })
  void whatWasNotReadInTheTextItselfMayOnlyAdvise(String note, String called, @TempDir Path folder)
      throws IOException, PackException {
    Path source = FOLDER.resolve("source-from-memory").resolve("pack.json");
    Path pack = Files.createDirectory(folder.resolve("source-from-memory"));
    Files.writeString(
        pack.resolve("pack.json"), Files.readString(source).replace("From memory.", note));
    List<String> said =
        Proof.of(PackLoader.loadForAuthor(pack.toString())).statements().stream()
            .map(Statement::sentence)
            .toList();
    assertEquals(1, said.size(), said.toString());
    assertTrue(
        said.get(0)
            .endsWith(
                "tank: doubtful: its source by-law is "
                    + called
                    + ": it may be an advisory at most"),
        said.get(0));
  }
}
