package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;

/**
 * What {@code prove} promises of a clean pack, tried from outside: a slip in any one figure, made
 * in the text of the pack, makes an example fail, so that the pack does not load.
 */
class FigureSlipTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";

  /**
   * A figure with its unit, and the same in brackets: a slip in one of the two alone is said to be
   * doubtful. Days of the calendar, words and names of tables are left alone.
   */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<![-\\w.'(])"
              + NUMBER
              + "( (?:ft|in|psi|gpm|gpd|mg/L|h|hours|cm|m|gal))\\b(?: \\("
              + NUMBER
              + "( [^)]*)\\))?");

  /** A place in the pack where a text can be changed. */
  private record Place(String text, Consumer<String> set) {}

  @ParameterizedTest
  @ValueSource(strings = {"fenwick-county", "minnesota", "quebec", "oregon"})
  void aSlipInAnyFigureMakesAnExampleFail(String name, @TempDir Path folder) throws IOException {
    slips(name, folder, 50);
  }

  @Test
  void aSlipInAFigureOfCommonPracticeMakesAnExampleFail(@TempDir Path folder) throws IOException {
    slips("common-practice", folder, 12);
  }

  private static void slips(String name, Path folder, int most) throws IOException {
    JsonNode pack = JSON.readTree(Path.of("rules", name, "pack.json").toFile());
    List<Runnable> slips = new ArrayList<>();
    List<String> unnoticed = new ArrayList<>();
    for (Place place : places(pack)) {
      Matcher figure = FIGURE.matcher(place.text);
      while (figure.find()) {
        String before = place.text.substring(0, figure.start(1));
        String after = place.text.substring(figure.end());
        String unit = figure.group(2);
        String bracket = figure.group(3);
        String bracketUnit = figure.group(4);
        double value = Double.parseDouble(figure.group(1));
        for (double factor : value == 0 ? new double[0] : new double[] {0.7, 1.4}) {
          slips.add(
              () -> {
                String slip = slip(value, factor) + unit;
                if (bracket != null) {
                  double other = Double.parseDouble(bracket);
                  slip += " (" + slip(other, factor) + bracketUnit + ")";
                }
                place.set.accept(before + slip + after);
                if (loads(pack, name, folder)) {
                  unnoticed.add(before + "[" + slip + "]" + after);
                }
                place.set.accept(place.text);
              });
        }
      }
    }
    long seed = 20261126;
    Random random = new Random(seed);
    assertTrue(slips.size() > 20, name + " has " + slips.size());
    while (slips.size() > most) {
      slips.remove(random.nextInt(slips.size()));
    }
    assertTrue(loads(pack, name, folder), "it loads without a slip");
    slips.forEach(Runnable::run);
    assertEquals(List.of(), unnoticed, "seed " + seed);
  }

  private static double slip(double value, double factor) {
    return Math.rint(value * factor * 1e4) / 1e4;
  }

  private static boolean loads(JsonNode pack, String name, Path folder) {
    try {
      Path at = Files.createDirectories(folder.resolve(name)).resolve("pack.json");
      Files.write(at, JSON.writeValueAsBytes(pack));
      PackLoader.load(at.toString());
      return true;
    } catch (PackException e) {
      return false;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Place> places(JsonNode pack) {
    List<Place> places = new ArrayList<>();
    for (JsonNode rule : pack.get("rules")) {
      if (!rule.has("ask")) {
        add(rule, "when", places);
        add(rule, "require", places);
        for (JsonNode text : rule.path("inForce")) {
          add(text, "when", places);
          add(text, "require", places);
        }
      }
    }
    for (JsonNode table : pack.path("tables")) {
      table.get("rows").forEach(row -> add(row, "value", places));
    }
    return places;
  }

  private static void add(JsonNode object, String key, List<Place> into) {
    if (object.path(key).isTextual()) {
      into.add(
          new Place(
              object.get(key).asText(),
              text -> ((ObjectNode) object).set(key, TextNode.valueOf(text))));
    }
  }

  /** What a changed formula is made of is what the formula was made of. */
  @ParameterizedTest
  @ValueSource(strings = {"common-practice", "fenwick-county", "tennessee"})
  void aFormulaIsTheSameWithItsOwnParts(String name) throws PackException {
    int count = 0;
    for (Rule rule : PackLoader.load(name).rules()) {
      for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
        count += parts(place.formula().tree());
      }
    }
    assertTrue(count > 500, "there are " + count);
  }

  private static int parts(Expr expr) {
    List<Expr> parts = Parts.of(expr);
    assertEquals(expr, Parts.with(expr, parts));
    return 1 + parts.stream().mapToInt(FigureSlipTest::parts).sum();
  }
}
