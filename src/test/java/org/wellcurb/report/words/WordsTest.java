package org.wellcurb.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Cautions;

/** The bundles are complete: nothing that a page may say is missing in either language. */
final class WordsTest {
  private static final Words EN = Words.in(Language.EN);
  private static final Words FR = Words.in(Language.FR);

  /** Texts that both languages write alike. */
  private static final Set<String> ALIKE =
      Set.of(
          "choice.abs",
          "notice.point",
          "choice.aluminium",
          "choice.commercial",
          "choice.irrigation",
          "choice.nad27",
          "choice.nad83",
          "choice.nominal",
          "choice.pe",
          "choice.public",
          "choice.pvc",
          "choice.submersible",
          "choice.turbine",
          "choice.wgs84",
          "col.contractor",
          "col.licence",
          "cross.rules.contractor",
          "rehearsal.licence",
          "entry.sample.arsenic",
          "entry.sample.e_coli",
          "entry.sample.ph",
          "entry.sample.sulfate",
          "entry.sample.uranium",
          "entry.site.zone",
          "kind.short.omission",
          "kind.short.one.omission");

  /** Who copies what a page shows beside an entry is read. */
  @Test
  void whateverUnitAPageShowsCanBeWrittenOnAForm() {
    List<String> unread = new ArrayList<>();
    for (Entry entry : Catalogue.standard().entries()) {
      for (UnitSystem system : List.of(UnitSystem.US, UnitSystem.METRIC)) {
        Unit unit = entry.unit(system);
        if (unit == null || unit.symbol().isEmpty()) {
          continue;
        }
        for (Words words : List.of(EN, FR)) {
          String written = "5 " + words.unit(unit);
          WellRecord read = RecordReader.of(Map.of(entry.key(), written));
          if (!unit.equals(read.unit(entry.index()))) {
            unread.add(entry.key() + ": " + written);
          }
        }
      }
    }
    assertEquals(List.of(), unread);
  }

  /** Of a key that stands twice the later text would silently take the place of the first. */
  @Test
  void noKeyStandsTwice() throws IOException {
    List<String> twice = new ArrayList<>();
    Path folder = Path.of("src/main/resources/org/wellcurb/report");
    for (String bundle : List.of("words", "labels", "drawings", "said")) {
      for (String end : List.of(".properties", "_fr.properties")) {
        Set<String> seen = new TreeSet<>();
        for (String line : Files.readAllLines(folder.resolve(bundle + end))) {
          String key = line.replaceFirst("=.*", "");
          if (line.contains("=") && !seen.add(key)) {
            twice.add(bundle + end + ": " + key);
          }
        }
      }
    }
    assertEquals(List.of(), twice);
  }

  @Test
  void bothLanguagesHaveTheSameKeysAndPlaces() {
    assertEquals(EN.keys(), FR.keys());
    for (String key : EN.keys()) {
      if (!key.endsWith(".one")) {
        assertEquals(places(EN.say(key)), places(FR.say(key)), key);
      }
    }
  }

  /** The later of two texts under one key would silently take the place of the first. */
  @Test
  void noBundleSaysAKeyTwice() throws IOException {
    List<String> twice = new ArrayList<>();
    int keys = 0;
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources/org/wellcurb"))) {
      for (Path file :
          files.filter(each -> each.toString().endsWith(".properties")).sorted().toList()) {
        Properties seen =
            new Properties() {
              @Override
              public synchronized Object put(Object key, Object value) {
                if (containsKey(key)) {
                  twice.add(file.getFileName() + ": " + key);
                }
                return super.put(key, value);
              }
            };
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
          seen.load(reader);
        }
        keys += seen.size();
      }
    }
    assertEquals(List.of(), twice);
    assertTrue(keys > 1000, "the bundles were not read");
  }

  @Test
  void frenchIsFrench() {
    for (String key : EN.keys()) {
      boolean same =
          EN.say(key).toLowerCase(Locale.ROOT).equals(FR.say(key).toLowerCase(Locale.ROOT));
      boolean isOnlyPlaces =
          EN.say(key).replaceAll("\\{[0-9]}", "").chars().noneMatch(Character::isLetter);
      boolean mayBe = ALIKE.contains(key) || isOnlyPlaces;
      assertTrue(!same || mayBe, key + " is the same in both languages: " + EN.say(key));
    }
  }

  @Test
  void everyEntryAndChoiceHasALabelInBothLanguages() {
    List<String> missing = new ArrayList<>();
    for (Entry entry : Catalogue.standard().entries()) {
      need("entry." + entry.key(), missing);
      entry.choices().forEach(choice -> need("choice." + choice.replace(' ', '_'), missing));
      if (entry.key().startsWith("setback.")) {
        need("place." + entry.key().substring("setback.".length()), missing);
      }
    }
    assertEquals(List.of(), missing, "add these to labels.properties and labels_fr.properties");
  }

  @Test
  void everyLabelIsOfAnEntryOrAChoice() {
    Set<String> known = new TreeSet<>();
    for (Entry entry : Catalogue.standard().entries()) {
      known.add("entry." + entry.key());
      entry.choices().forEach(choice -> known.add("choice." + choice.replace(' ', '_')));
    }
    for (String key : EN.keys()) {
      if (key.startsWith("entry.") || key.startsWith("choice.")) {
        assertTrue(known.contains(key), key + " labels nothing");
      }
    }
  }

  @Test
  void whatIsNamedByValueHasWords() {
    List<String> missing = new ArrayList<>();
    for (Outcome outcome : Outcome.values()) {
      need("outcome." + outcome.name().toLowerCase(Locale.ROOT), missing);
      need("outcome." + outcome.name().toLowerCase(Locale.ROOT) + ".caption", missing);
    }
    for (FindingKind kind : FindingKind.values()) {
      need("kind." + kind.label(), missing);
      need("kind.short." + kind.label(), missing);
      need("kind.short.one." + kind.label(), missing);
      need("first." + kind.label() + ".one", missing);
      need("first." + kind.label() + ".many", missing);
    }
    for (Source.Basis basis : Source.Basis.values()) {
      need("basis." + basis.name().toLowerCase(Locale.ROOT), missing);
    }
    for (Note note : Note.values()) {
      if (note != Note.NONE) {
        need("note." + note.name().toLowerCase(Locale.ROOT), missing);
      }
    }
    for (Group group : Group.values()) {
      need(group.heading(), missing);
    }
    Cautions.ALL.forEach(key -> need("caution." + key, missing));
    assertEquals(List.of(), missing);
  }

  @Test
  void templatesSayOnlyWhatTheBundlesHave() throws IOException {
    Pattern said = Pattern.compile("\\b([tn])\\(\"([a-z_.]+)\"[,)]");
    int seen = 0;
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/wellcurb/report"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".ftl")).sorted().toList()) {
        Matcher matcher = said.matcher(Files.readString(file, StandardCharsets.UTF_8));
        while (matcher.find()) {
          seen++;
          String key = matcher.group(2) + (matcher.group(1).equals("n") ? ".many" : "");
          assertTrue(EN.has(key), file.getFileName() + " says " + key);
        }
      }
    }
    assertTrue(seen > 100, "the templates were not read");
  }

  @Test
  void everyTextIsUsed() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String folder : List.of("src/main/resources/org/wellcurb", "src/main/java/org/wellcurb")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file :
            files.filter(each -> each.toString().matches(".*\\.(ftl|java)")).sorted().toList()) {
          all.append(Files.readString(file, StandardCharsets.UTF_8));
        }
      }
    }
    List<String> byValue =
        List.of(
            "entry.",
            "choice.",
            "place.",
            "water.figure.",
            "rulebook.units.",
            "rulebook.waived.",
            "variance.",
            "group.",
            "outcome.",
            "kind.",
            "basis.",
            "note.",
            "doubt.",
            "trouble.",
            "caution.",
            "first.",
            "said.");
    for (String key : EN.keys()) {
      String stem = key.replaceAll("\\.(one|many)$", "");
      boolean named = all.indexOf("\"" + stem + "\"") >= 0;
      assertTrue(named || byValue.stream().anyMatch(key::startsWith), key + " is never said");
    }
  }

  /** What a reader says otherwise by now would stand in English on a French page. */
  @Test
  void whatReadersSayIsFoundInTheProgram() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String room : List.of("intake", "batch", "rulepack", "workings")) {
      try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/wellcurb", room))) {
        for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
          all.append(Files.readString(file, StandardCharsets.UTF_8));
        }
      }
    }
    String program = all.toString().replaceAll("\"\\s*\\+\\s*\"", "").toLowerCase(Locale.ROOT);
    List<String> gone = new ArrayList<>();
    for (String key : EN.keys()) {
      if (key.startsWith("said.")
          && !key.startsWith("said.format.")
          && !key.startsWith("said.wanted.")) {
        for (String piece : EN.say(key).split("\\{[0-9]}|[;:,.()] ?| at line ")) {
          if (piece.length() > 9 && !program.contains(piece.strip().toLowerCase(Locale.ROOT))) {
            gone.add(key + ": " + piece);
          }
        }
      }
    }
    assertEquals(List.of(), gone);
  }

  @Test
  void whatAReaderSaysIsSaidInFrench() {
    assertEquals("a 9 cellules, l'en-tête en a 22", FR.said("has 9 cells, the header has 22"));
    assertEquals("CSV, virgule, UTF-8", FR.said("CSV, comma, UTF-8"));
    assertEquals("Mis de côté en entier\u00a0: est vide.", FR.said("Set aside whole: is empty."));
    assertEquals(
        "Colonne x\u00a0: l'unité furlong est inconnue.",
        FR.said("Column x: the unit furlong is not known."));
    assertEquals(
        "Profondeur finie n'est pas écarté comme sans objet",
        FR.said("well.depth is not written off as not applicable"));
    assertEquals("", FR.said("something else"));
    assertEquals("", FR.said("is empty ".repeat(1000)));
    assertEquals("", EN.said("is empty"));
  }

  @Test
  void whatIsPutInIsNotReadAgain() {
    assertEquals("{1} to {0}", EN.say("amount.range", "{1}", "{0}"));
  }

  @Test
  void oneAndNoneAreCountedAsEachLanguageDoes() {
    assertEquals("1 day", EN.count("days", 1));
    assertEquals("0 days", EN.count("days", 0));
    assertEquals("0 jour", FR.count("days", 0));
    assertEquals("2 jours", FR.count("days", 2));
  }

  @Test
  void aKeyThatIsNotThereIsNamed() {
    assertEquals(
        "no words for no.such in fr",
        assertThrows(IllegalArgumentException.class, () -> FR.say("no.such")).getMessage());
  }

  private static void need(String key, List<String> missing) {
    if (!EN.has(key) || !FR.has(key)) {
      missing.add(key);
    }
  }

  private static Set<String> places(String text) {
    Set<String> places = new TreeSet<>();
    Matcher matcher = Pattern.compile("\\{([^}]*)}").matcher(text);
    while (matcher.find()) {
      assertTrue(matcher.group(1).matches("[0-9]"), text);
      places.add(matcher.group(1));
    }
    return places;
  }

  @Test
  void yesAndNoAreChoicesToo() {
    assertEquals("non", Words.in(Language.FR).choice("no"));
    assertEquals("oui", Words.in(Language.FR).choice("yes"));
    assertEquals("no", EN.choice("no"));
  }

  /** French sets a space before a colon, so a template takes it from the bundle. */
  @Test
  void templatesWriteNoColonAfterWhatTheyPutIn() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/wellcurb/report"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".ftl")).sorted().toList()) {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        assertTrue(!text.contains("}: "), file.getFileName() + " writes a colon of its own");
      }
    }
  }
}
