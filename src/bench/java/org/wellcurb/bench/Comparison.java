package org.wellcurb.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * One comparison that the peers make: a column against a limit, or against another column with a
 * distance. A blank, or what is no number, passes.
 *
 * @param rule what its failures are called
 * @param left place of the column on the left
 * @param least true for {@code >=}, false for {@code <=}
 * @param right place of the column on the right; -1 for none
 * @param plus what is added on the right
 */
record Comparison(String rule, int left, boolean least, int right, double plus) {
  private static final Pattern OPERATOR =
      Pattern.compile("<=|>=|<>|<|>|=|\\bis\\b|\\bbetween\\b|\\bknown\\b");

  /** Those whose failures {@link Fault} plants, beside the plausible ranges. */
  private static final String[][] TRUE_TO_LIFE = {
    {"setback.septic_tank", ">=", "", "50"},
    {"setback.absorption_field", ">=", "", "50"},
    {"relief.setting", ">=", "pressure.cut_out", "10"},
    {"tank.precharge", "<=", "pressure.cut_in", "-1"},
    {"pressure.cut_in", "<=", "pressure.cut_out", "-5"},
    {"water.pumping_level", "<=", "well.depth", "0"},
    {"well.casing_depth", ">=", "", "20"},
    {"pitless.depth", ">=", "", "4"},
    {"sample.nitrate", "<=", "", "10"},
    {"pump.intake_depth", "<=", "well.depth", "-5"},
    {"water.static_level", "<=", "water.pumping_level", "0.5"},
    {"well.casing_depth", "<=", "well.drilled_depth", "0"},
  };

  /** How many comparisons the rules of a pack make, each text of a dated rule counted. */
  static int count(Pack pack) {
    int count = 0;
    for (Rule rule : pack.rules()) {
      count += count(rule.program().when());
      for (DatedText text : rule.program().texts()) {
        count += count(text.when()) + count(text.require());
      }
    }
    return count;
  }

  private static int count(@org.jspecify.annotations.Nullable Formula formula) {
    int count = 0;
    if (formula != null) {
      Matcher matcher = OPERATOR.matcher(formula.text());
      while (matcher.find()) {
        count++;
      }
    }
    return count;
  }

  /** So many comparisons over the columns of the big file. */
  static List<Comparison> some(int many) {
    List<Comparison> some = new ArrayList<>();
    for (String[] known : TRUE_TO_LIFE) {
      int right = Columns.KEYS.indexOf(known[2]);
      add(some, many, known[0], known[1].equals(">="), right, Double.parseDouble(known[3]));
    }
    for (int round = 0; some.size() < many; round++) {
      for (String key : Columns.KEYS) {
        Entry entry = Catalogue.standard().entry(Catalogue.standard().index(key));
        Unit unit = entry.usUnit();
        if (Columns.isNumber(key) && unit != null && !entry.plausible().isAll()) {
          // Further and further out, so that no two are the same.
          double room = round * (entry.plausible().hi() - entry.plausible().lo());
          add(some, many, key, true, -1, unit.fromSi(entry.plausible().lo() - room));
          add(some, many, key, false, -1, unit.fromSi(entry.plausible().hi() + room));
        }
      }
    }
    return some;
  }

  private static void add(
      List<Comparison> to, int many, String key, boolean least, int right, double plus) {
    if (to.size() < many) {
      String rule = key + (least ? " at least " : " at most ") + to.size();
      to.add(new Comparison(rule, Columns.KEYS.indexOf(key), least, right, plus));
    }
  }

  /** As an expression that is true where it fails, columns written as these texts. */
  String failing(List<String> columns) {
    String other = right < 0 ? "" : columns.get(right) + " + ";
    return columns.get(left) + (least ? " < " : " > ") + other + "(" + plus + ")";
  }
}
