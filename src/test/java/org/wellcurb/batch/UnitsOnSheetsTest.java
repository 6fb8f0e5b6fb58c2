package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** Sheets print either system, in sentences and drawings, with the record's own beside it. */
class UnitsOnSheetsTest {
  private static final String US = "ft|in|psi|gpm|gal|hp";
  private static final String METRIC = "m|mm|kPa|L/min|L|kW";

  /** How many of the second are one of the first, exactly by definition or to six figures. */
  private static final Map<String, Double> FACTORS =
      Map.of(
          "ft m", 0.3048,
          "in mm", 25.4,
          "psi kPa", 6.894757,
          "gpm L/min", 3.785411784,
          "gal L", 3.785411784,
          "hp kW", 0.7456999);

  private static final Pattern BOTH =
      Pattern.compile("(?<![0-9.-])([0-9.]+) (\\S+) \\[([0-9.]+) (" + US + "|" + METRIC + ")]");

  @TempDir Path dir;

  @ParameterizedTest
  @EnumSource(
      value = UnitsShown.class,
      names = {"US", "METRIC"})
  void theRecordsOwnStandsBeside(UnitsShown units) throws Exception {
    Runs.run(
        ScreenRequest.plain(
                List.of("sample-records"),
                List.of("fenwick-county", "tarn-district"),
                dir,
                Runs.AS_OF)
            .with(
                OutputOptions.PLAIN
                    .with(SheetsFor.FLAGGED, 100)
                    .styled(new PageStyle(Language.EN, units))));
    String other = units == UnitsShown.US ? METRIC : US;
    // The samples of one district are in one system, those of the other in the other.
    String turned = units == UnitsShown.US ? "sheets/TD" : "sheets/FW";
    Pattern alone = Pattern.compile("[0-9] (" + other + ")(?![/A-Za-z0-9])");
    List<String> wrong = new ArrayList<>();
    int pairs = 0;
    int labels = 0;
    for (Map.Entry<String, String> page : Runs.files(dir).entrySet()) {
      if (!page.getKey().startsWith(turned)) {
        continue;
      }
      String html =
          new String(page.getValue().getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
      Matcher label = Pattern.compile("<text[^>]*>([^<]*)</text>").matcher(html);
      while (label.find()) {
        labels++;
        if (alone.matcher(label.group(1).replaceAll("\\[[^]]*]", "")).find()) {
          wrong.add(page.getKey() + " drawing: " + label.group(1));
        }
      }
      Matcher heading = Pattern.compile("<h3 id=\"finding[^>]*>(.*?)</h3>").matcher(html);
      while (heading.find()) {
        String bare = heading.group(1).replaceAll("\\[[^]]*]", "");
        if (alone.matcher(bare).find()) {
          wrong.add(page.getKey() + " finding: " + heading.group(1));
        }
      }
      StringBuilder drawn = new StringBuilder();
      Matcher figure = Pattern.compile("(?s)<figure.*?</figure>").matcher(html);
      while (figure.find()) {
        drawn.append(figure.group().replaceAll("<[^>]*>", " "));
      }
      String figures = drawn.toString();
      Matcher both = BOTH.matcher(html.replaceAll("<[^>]*>", " "));
      while (both.find()) {
        pairs++;
        double shown = Double.parseDouble(both.group(1));
        double own = Double.parseDouble(both.group(3));
        double factor = factor(both.group(4), both.group(2));
        double expected = own * factor;
        boolean isOwn = Math.abs(shown - expected) <= 6e-4 * Math.abs(expected) + 1e-9;
        // In a drawing an amount is rounded for people, to no less than its last place.
        boolean isDrawn = figures.contains(both.group()) && isRounded(both.group(1), expected);
        if (!isOwn && !isDrawn && !isLimit(shown, own, factor)) {
          wrong.add(page.getKey() + ": " + both.group());
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(pairs > 100 && labels > 100, pairs + " amounts, " + labels + " labels");
  }

  private static boolean isRounded(String shown, double exact) {
    int point = shown.indexOf('.');
    double last = point < 0 ? 1 : Math.pow(10, point + 1 - shown.length());
    return Math.abs(Double.parseDouble(shown) - exact) <= last / 2 * (1 + 1e-6);
  }

  /** A limit stands first as it is written, with what it comes to in three digits beside it. */
  private static boolean isLimit(double written, double beside, double factor) {
    double exact = written / factor;
    double half = 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(exact))) - 2);
    return Math.abs(beside - exact) <= half * (1 + 1e-6);
  }

  private static double factor(String from, String to) {
    Double factor = FACTORS.get(from + " " + to);
    if (factor != null) {
      return factor;
    }
    Double inverse = FACTORS.get(to + " " + from);
    return inverse == null ? Double.NaN : 1 / inverse;
  }
}
