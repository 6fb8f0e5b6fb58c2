package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.formula.Table;

/** The packs that ship with French have all of it, and a file of French that is none is refused. */
final class FrenchTextsTest {
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");

  /** Rules that the program makes of the pack's own list; the bundles have their words. */
  private static final String APPLIES = "applies-";

  @TempDir Path dir;

  private static Map<String, String> french(Pack pack) {
    Map<String, String> all = new HashMap<>();
    pack.files().forEach(file -> all.putAll(file.french()));
    return all;
  }

  private static Set<String> texts(Pack pack) {
    Set<String> texts = new LinkedHashSet<>(List.of(pack.title(), pack.authority(), pack.notice()));
    pack.tables().values().stream()
        .map(Table::title)
        .filter(title -> !title.isEmpty())
        .forEach(texts::add);
    pack.drops().forEach(drop -> texts.add(drop.because()));
    for (Rule rule : pack.rules()) {
      if (rule.id().startsWith(APPLIES)) {
        continue;
      }
      texts.addAll(List.of(rule.title(), rule.because(), rule.remedy(), rule.atOnce(), rule.ask()));
    }
    texts.remove("");
    return texts;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "common-practice",
        "fenwick-county",
        "tarn-district",
        "quebec",
        "federal-drinking-water"
      })
  void everyTextHasFrenchWithTheSameFigures(String name) throws Exception {
    Pack pack = PackLoader.load(name);
    Map<String, String> french = french(pack);
    List<String> wrong = new ArrayList<>();
    for (String text : texts(pack)) {
      String said = french.get(text);
      if (said == null) {
        wrong.add("no French: " + text);
        continue;
      }
      Matcher number = NUMBER.matcher(text);
      while (number.find()) {
        String figure = number.group();
        boolean isThere =
            said.contains(figure.replace('.', ',')) || said.contains(figure.replace(',', ' '));
        if (!isThere) {
          wrong.add(figure + " is lost: " + said);
        }
      }
    }
    assertEquals(List.of(), wrong, "write these in rules/" + name + "/" + FrenchTexts.FILE);
  }

  /** What stands for a text that was changed since is of no use to anyone. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "common-practice",
        "fenwick-county",
        "tarn-district",
        "quebec",
        "federal-drinking-water"
      })
  void noFrenchIsOfATextThatIsGone(String name) throws Exception {
    Pack pack = PackLoader.load(name);
    PackFile own = pack.files().get(pack.files().size() - 1);
    assertEquals(name, own.pack());
    Set<String> idle = new LinkedHashSet<>(own.french().keySet());
    // Of the file itself: what another pack drops or replaces stands in it all the same.
    idle.removeIf(text -> own.text().contains(text.replace("\"", "\\\"")));
    assertEquals(Set.of(), idle, "take these out of rules/" + name + "/" + FrenchTexts.FILE);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "|{\"a\": \"b\"|,is not JSON",
        "|[\"a\"]|,is no object of texts",
        "|{\"a\": 1}|,|has no text for \"a\"|",
        "|{\"a\": \" \"}|,|has no text for \"a\"|",
        "|{\"a\": \"b\", \"a\": \"c\"}|,is not JSON",
      })
  void aFileThatIsNoneIsRefusedInOneLine(String text, String why) throws IOException {
    Path pack = pack();
    Files.writeString(pack.resolve(FrenchTexts.FILE), text);
    PackException refused =
        assertThrows(PackException.class, () -> PackLoader.load(pack.toString()));
    assertEquals(1, refused.problems().size());
    String said = refused.problems().get(0).toString();
    assertTrue(said.contains(FrenchTexts.FILE) && said.contains(why), said);
  }

  @Test
  void aPackWithoutFrenchLoads() throws Exception {
    assertEquals(Map.of(), french(PackLoader.load(pack().toString())));
  }

  private Path pack() throws IOException {
    Path pack = Files.createDirectories(dir.resolve("mine"));
    String text =
        Files.readString(Path.of("src/main/resources/org/wellcurb/rulepack/starting-pack.json"));
    Files.writeString(pack.resolve("pack.json"), text.replace("NAME", "mine"));
    return pack;
  }
}
