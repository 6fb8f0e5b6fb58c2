package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No error of a pack is without its small bad pack. All that the readers of packs and formulas can
 * say is found in their own source, word for word, and must stand in a golden of {@link
 * BadPacksTest}, or be named here with the reason why no pack can bring it about.
 */
class EveryPackErrorTest {
  private static final Path MAIN = Path.of("src/main/java/org/wellcurb");
  private static final Path FOLDER = Path.of("src/test/resources/bad-packs");

  /**
   * What says nothing to the author of a refused pack: what prove notes, what a new pack holds,
   * signs of units; and the texts in French, which stand in a file of their own (FrenchTextsTest).
   */
  private static final Set<String> OTHERS =
      Set.of(
          "rulepack/DateProof.java",
          "rulepack/DualProof.java",
          "rulepack/FrenchTexts.java",
          "rulepack/InheritedProof.java",
          "rulepack/LimitProof.java",
          "rulepack/ListedWords.java",
          "rulepack/SideProof.java",
          "rulepack/SpanProof.java",
          "rulepack/SpellingProof.java",
          "rulepack/TableGaps.java",
          "rulepack/VoidProof.java",
          "rulepack/MustApply.java",
          "rulepack/Neighbours.java",
          "rulepack/PairProof.java",
          "rulepack/Proof.java",
          "rulepack/Source.java",
          "rulepack/StandingProof.java",
          "rulepack/StartingPack.java",
          "rulepack/Statement.java",
          "rulepack/TableProof.java",
          "rulepack/UseProof.java",
          "rulepack/WordProof.java",
          "formula/Symbols.java");

  /** What no pack of the folder can bring about. */
  private static final Map<String, String> NEVER =
      Map.ofEntries(
          Map.entry("no node for", "a fault of the program, not of a pack"),
          Map.entry("no figure", "a fault of the program, not of a pack"),
          Map.entry("it is gone", "a fault of the program, not of a pack"),
          Map.entry("the file cannot be read", "of the machine; FaultyFilesTest"),
          Map.entry("look whether it is a file that you may read", "of the machine"),
          Map.entry("the file is larger than", "too large a file to keep; FaultyFilesTest"),
          Map.entry("split it: a pack can be built on others", "see the larger file"),
          Map.entry("there is no such pack", "no file; FaultyFilesTest"),
          Map.entry("mend the name", "no file; FaultyFilesTest"),
          Map.entry("give a folder with a pack.json in it, or such a file", "see no such pack"),
          Map.entry("there is no condition", "the schema says first that nothing is written"),
          Map.entry("write one, such as well.depth > 20 ft", "see no condition"),
          Map.entry("this has not the shape that it must have", "the schema says it first"),
          Map.entry("see rules/README.md", "every key of the schema has a description"),
          Map.entry("what it must be", "every key of the schema has a description"),
          Map.entry("something stands twice", "two equal things are found before"));

  private static final Pattern COMMENTS =
      Pattern.compile("/\\*.*?\\*/|(?m)^\\s*//.*?$", Pattern.DOTALL);
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
  private static final Pattern LETTERS = Pattern.compile("[a-z]");

  @Test
  void allThatCanBeSaidOfAPackStandsInAGolden() throws IOException {
    String goldens = goldens();
    List<String> missing = new ArrayList<>();
    Map<String, String> said = said();
    said.forEach(
        (words, file) -> {
          if (!goldens.contains(words) && !NEVER.containsKey(words)) {
            missing.add(file + ": " + words);
          }
        });
    assertTrue(said.size() > 150, "there are " + said.size());
    assertEquals(List.of(), missing, "write a small bad pack for each");
  }

  @Test
  void whatIsExceptedIsStillSaidAndInNoGolden() throws IOException {
    String goldens = goldens();
    Set<String> stale = new TreeSet<>(NEVER.keySet());
    stale.removeAll(said().keySet());
    NEVER.keySet().stream().filter(goldens::contains).forEach(stale::add);
    assertEquals(Set.of(), stale);
  }

  private static String goldens() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String name : PackFinder.names(FOLDER)) {
      Path golden = FOLDER.resolve(name).resolve("expected.txt");
      if (Files.exists(golden)) {
        all.append(Files.readString(golden)).append('\n');
      }
    }
    return all.toString();
  }

  /** Each piece of text of two words and more in the sources, with the file that says it. */
  private static Map<String, String> said() throws IOException {
    Map<String, String> pieces = new LinkedHashMap<>();
    for (String room : List.of("rulepack", "formula")) {
      List<Path> files;
      try (Stream<Path> in = Files.list(MAIN.resolve(room))) {
        files = in.filter(f -> f.toString().endsWith(".java")).sorted().toList();
      }
      for (Path file : files) {
        String name = room + "/" + file.getFileName();
        if (!OTHERS.contains(name)) {
          pieces(Files.readString(file)).forEach(piece -> pieces.putIfAbsent(piece, name));
        }
      }
    }
    return pieces;
  }

  private static List<String> pieces(String source) {
    String code = JOINED.matcher(COMMENTS.matcher(source).replaceAll("")).replaceAll("");
    List<String> pieces = new ArrayList<>();
    Matcher literal = LITERAL.matcher(code);
    while (literal.find()) {
      String text = literal.group(1).replace("\\\"", "\"").strip();
      if (text.contains(" ") && LETTERS.matcher(text).results().count() >= 4) {
        pieces.add(text);
      }
    }
    return pieces;
  }
}
