package org.wellcurb.report.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.ONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Form;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/**
 * Whatever a form holds, its drawings can be read: no text over another, nothing outside, and each
 * label stands in the words beside it.
 */
final class AnyFormDrawnTest {
  private static final int SEEDS = 150;
  private static final Pattern TEXT =
      Pattern.compile("<text class=\"([a-z-]+)\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\">([^<]*)</text>");
  private static final Pattern SHAPE = Pattern.compile("<(line|rect|circle|path) ([^>]*)/>");
  private static final Pattern NUMBER = Pattern.compile("([a-z0-9]+)=\"(-?[0-9.]+)\"");
  private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

  private record Box(double left, double top, double right, double bottom, String what) {
    boolean meets(Box other) {
      return left < other.right - 0.5
          && other.left < right - 0.5
          && top < other.bottom - 0.5
          && other.top < bottom - 0.5;
    }
  }

  @ParameterizedTest
  @EnumSource(UnitsShown.class)
  void canBeRead(UnitsShown units) {
    for (long seed = 1; seed <= SEEDS; seed++) {
      Random random = new Random(seed);
      List<Mark> marks = new ArrayList<>();
      Map<String, Limit> limits = new HashMap<>();
      WellRecord record = form(random, marks, limits);
      Language language = seed % 2 == 0 ? Language.EN : Language.FR;
      for (Drawing drawing : Sketches.of(record, language, units, marks, limits).drawings()) {
        String where = "seed " + seed + ", " + drawing.id() + ": ";
        Matcher size = BOX.matcher(drawing.svg());
        assertTrue(size.find(), where);
        double width = Double.parseDouble(size.group(1));
        double height = Double.parseDouble(size.group(2));
        textsApart(drawing, where, width, height);
        shapesInside(drawing, where, width, height);
        labelsInWords(drawing, where);
      }
    }
  }

  private static void textsApart(Drawing drawing, String where, double width, double height) {
    List<Box> boxes = new ArrayList<>();
    Matcher text = TEXT.matcher(drawing.svg());
    while (text.find()) {
      double x = Double.parseDouble(text.group(2));
      double y = Double.parseDouble(text.group(3));
      String said = plain(text.group(4));
      double wide = Lettering.width(said) * (text.group(1).equals("title") ? 1.08 : 1);
      double left =
          switch (text.group(1)) {
            case "tick" -> x - wide;
            case "ring-text", "seal-number", "mark-letter" -> x - wide / 2;
            default -> x;
          };
      boxes.add(new Box(left, y - 10, left + wide, y + 3, said));
    }
    for (int i = 0; i < boxes.size(); i++) {
      Box a = boxes.get(i);
      boolean isInside =
          a.left() >= -0.5 && a.right() <= width + 0.5 && a.top() >= 0 && a.bottom() <= height;
      assertTrue(isInside, where + a + " of " + width + " x " + height);
      for (Box b : boxes.subList(i + 1, boxes.size())) {
        assertFalse(a.meets(b), where + a + " and " + b);
      }
    }
  }

  private static void shapesInside(Drawing drawing, String where, double width, double height) {
    String drawn = drawing.svg().replaceAll("<pattern.*?</pattern>", "");
    Matcher shape = SHAPE.matcher(drawn);
    while (shape.find()) {
      Map<String, Double> at = new HashMap<>();
      Matcher number = NUMBER.matcher(shape.group(2));
      while (number.find()) {
        at.put(number.group(1), Double.parseDouble(number.group(2)));
      }
      double r = at.getOrDefault("r", 0.0);
      for (String key : List.of("x", "x1", "x2", "cx")) {
        double x = at.getOrDefault(key, width / 2);
        assertTrue(x - r >= -1 && x + r <= width + 1, where + shape.group());
      }
      for (String key : List.of("y", "y1", "y2", "cy")) {
        double y = at.getOrDefault(key, height / 2);
        assertTrue(y - r >= -1 && y + r <= height + 1, where + shape.group());
      }
      double right = at.getOrDefault("x", 0.0) + at.getOrDefault("width", 0.0);
      double foot = at.getOrDefault("y", 0.0) + at.getOrDefault("height", 0.0);
      assertTrue(right <= width + 1 && foot <= height + 1, where + shape.group());
    }
  }

  /** Each word of a label stands in the words; those of reckoned places under their own names. */
  private static void labelsInWords(Drawing drawing, String where) {
    String words = String.join(" ", drawing.words()) + " " + Sketches.legend(drawing);
    Matcher text = TEXT.matcher(drawing.svg());
    while (text.find()) {
      if (text.group(1).equals("label") || text.group(1).equals("title")) {
        for (String word : plain(text.group(4)).split(" ")) {
          String bare = word.replaceAll("[,:.]$", "");
          if (Sketches.TOPMOST.contains(bare)) {
            continue;
          }
          assertTrue(
              words.toLowerCase(Locale.ROOT).contains(bare.toLowerCase(Locale.ROOT)),
              where + word + ": " + words);
        }
      }
    }
  }

  private static String plain(String text) {
    return text.replace("&#39;", "'")
        .replace("&quot;", "\"")
        .replace("&gt;", ">")
        .replace("&lt;", "<")
        .replace("&amp;", "&");
  }

  /** A form with some entries of every kind that is drawn, likely and unlikely, and findings. */
  private static WellRecord form(Random random, List<Mark> marks, Map<String, Limit> limits) {
    Form form = new Form("FW-1");
    double deep = new double[] {25, 120, 400, 2500, 1e9}[random.nextInt(5)];
    int sparse = 2 + random.nextInt(4);
    for (Entry entry : Catalogue.standard().entries()) {
      if (random.nextInt(sparse) == 0) {
        continue;
      }
      Unit unit = entry.unit(random.nextInt(6) == 0 ? UnitSystem.METRIC : UnitSystem.US);
      if (entry.kind() == Kind.CHOICE && !entry.choices().isEmpty()) {
        form.text(entry.key(), entry.choices().get(random.nextInt(entry.choices().size())));
      } else if (unit != null && isDrawn(entry)) {
        amount(form, entry, unit, random, deep);
      } else {
        continue;
      }
      for (int i = random.nextInt(12) == 0 ? random.nextInt(5) : 0; i > 0; i--) {
        String letter = String.valueOf((char) ('A' + marks.size() % 26));
        marks.add(new Mark(letter, "finding-" + letter, "Short", List.of(entry.key())));
      }
      if (random.nextInt(3) == 0) {
        limits.put(entry.key(), limit(random));
      }
    }
    form.amount("pump.check_valves", random.nextInt(7), ONE);
    form.amount("pump.torque_arresters", random.nextInt(12), ONE);
    double from = 0;
    for (int i = random.nextInt(3) == 0 ? random.nextInt(50) : 0; i > 0; i--) {
      double to = from + random.nextInt(20);
      form.layer(from, to, FOOT, random.nextBoolean() ? "clay <b>" : "sand ".repeat(30));
      from = to;
    }
    return form.record();
  }

  private static boolean isDrawn(Entry entry) {
    return entry
        .key()
        .matches(
            "(well|grout|water|pitless|pump|tank|pressure|relief|drop_pipe|service_line|setback"
                + "|storage|site\\.(frost|bed|occ|dwel)).*");
  }

  private static Limit limit(Random random) {
    double si = 1 + random.nextInt(60);
    return switch (random.nextInt(5)) {
      case 0 -> Limit.of(List.of(new Limit.Way(si, ""), new Limit.Way(si / 2, "a is b")));
      case 1 -> Limit.of(List.of(new Limit.Way(si, ""), new Limit.Way(Double.NaN, "a is b")));
      case 2 -> Limit.said("a is at least b or c");
      case 3 -> Limit.of(si / 20).ofFrost();
      default -> Limit.of(si);
    };
  }

  private static void amount(Form form, Entry entry, Unit unit, Random random, double deep) {
    boolean isLength = unit.dimension().equals(Dimension.LENGTH);
    double most = isLength ? deep : entry.kind() == Kind.COUNT ? 8 : 150;
    double lo = Math.round(random.nextDouble() * most * 10) / 10.0;
    if (entry.kind() == Kind.COUNT) {
      form.amount(entry.key(), Math.rint(lo), unit);
      return;
    }
    switch (random.nextInt(12)) {
      case 0 -> form.range(entry.key(), lo, lo * 1.3 + 1, unit, "a range");
      case 1 -> form.range(entry.key(), lo, Double.POSITIVE_INFINITY, unit, "more");
      case 2 -> form.range(entry.key(), 0, lo + 1, unit, "less");
      case 3 -> form.amount(entry.key(), -lo, unit);
      default -> form.amount(entry.key(), lo, unit);
    }
  }
}
