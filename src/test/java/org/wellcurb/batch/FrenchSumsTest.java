package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/** What a form ticks is said in French in the sums of a French sheet. */
class FrenchSumsTest {
  private static final Words FR = Words.in(Language.FR);
  private static final Pattern SUM = Pattern.compile("class=\"sum\">(.*?)</(?:span|dd)>");

  @TempDir Path dir;

  /** Choices of the catalogue that French says otherwise. */
  private static Set<String> words() {
    Set<String> words = new TreeSet<>(Set.of("yes", "no"));
    for (Entry entry : Catalogue.standard().entries()) {
      words.addAll(entry.choices());
    }
    words.removeIf(word -> FR.choice(word).equals(word));
    return words;
  }

  @Test
  void noEnglishChoiceStandsInASum() throws Exception {
    Runs.run(
        ScreenRequest.plain(
                List.of("sample-records"),
                List.of("fenwick-county", "tarn-district"),
                dir.resolve("out"),
                Runs.AS_OF)
            .with(
                OutputOptions.PLAIN
                    .with(SheetsFor.ALL, 100)
                    .styled(new PageStyle(Language.FR, UnitsShown.AS_WRITTEN)))
            .with(NoticeOptions.NONE)
            .by(2));
    Set<String> words = words();
    assertTrue(words.size() > 100, words.toString());
    String any = words.stream().map(Pattern::quote).collect(Collectors.joining("|"));
    // As a value in brackets, after a colon, or in a list of what is asked for.
    Pattern raw = Pattern.compile("(?:[(,:] ?| ou )(" + any + ")(?=[),]| \\(| ou |$)");
    Set<String> left = new TreeSet<>();
    int sums = 0;
    for (Map.Entry<String, String> file : Runs.files(dir.resolve("out")).entrySet()) {
      if (!file.getKey().startsWith("sheets/")) {
        continue;
      }
      String page =
          new String(file.getValue().getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
      Matcher sum = SUM.matcher(page.replaceAll("<span lang=\"en\">.*?</span>", ""));
      while (sum.find()) {
        sums++;
        Matcher word = raw.matcher(sum.group(1).replace('\u00a0', ' '));
        while (word.find()) {
          left.add(word.group(1) + " in " + sum.group(1));
        }
      }
    }
    assertTrue(sums > 1000, "sums: " + sums);
    assertEquals("", String.join("\n", left));
    assertTrue(Files.exists(dir.resolve("out/index.html")));
  }
}
