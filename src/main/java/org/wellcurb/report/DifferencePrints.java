package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.report.DifferencePrint.Line;
import org.wellcurb.report.RehearsalView.Difference;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.RuleDifference.What;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.WorkingCatalogue;

/** Puts into words in what the rules of two packs differ. */
final class DifferencePrints {
  private final Pack before;
  private final Pack after;
  private final Words words;
  private final RuleTexts texts;
  private final BothUnits units;

  DifferencePrints(Pack before, Pack after, Words words) {
    this.before = before;
    this.after = after;
    this.words = words;
    texts = new RuleTexts(words);
    units = BothUnits.asWritten(words);
  }

  DifferencePrint of(Difference difference) {
    List<Line> lines = new ArrayList<>();
    texts(difference.before(), difference.after(), difference, lines);
    difference.what().tables().forEach(name -> table(name, lines));
    difference.what().figures().forEach(name -> figure(name, lines));
    others(difference, lines);
    long judged = difference.after() == null ? difference.judgedBefore() : difference.judgedAfter();
    return new DifferencePrint(
        difference.rule().id(),
        new RuleWords(words).title(difference.rule()),
        words.count("rehearsal.judges", judged, difference.changed())
            + " "
            + words.say(
                "rehearsal.judges.short", difference.shortBefore(), difference.shortAfter()),
        difference.older() == 0
            ? ""
            : words.count("rehearsal.older", difference.older(), after.edition()),
        lines);
  }

  /** The texts that stand in one of the packs only, side by side. */
  private void texts(
      @Nullable Rule old, @Nullable Rule now, Difference difference, List<Line> lines) {
    Set<What> what = difference.what().what();
    if (!what.contains(What.TEXT) && !what.contains(What.RULE)) {
      return;
    }
    List<String> was = old == null ? List.of() : new ArrayList<>(texts.lines(old));
    List<String> is = now == null ? List.of() : new ArrayList<>(texts.lines(now));
    if (old != null && now != null) {
      List<String> both = was.stream().filter(is::contains).toList();
      was.removeAll(both);
      is.removeAll(both);
    }
    String title = words.say("rehearsal.what.text");
    for (int i = 0; i < Math.max(was.size(), is.size()); i++) {
      lines.add(Line.of(title, i < was.size() ? was.get(i) : "", i < is.size() ? is.get(i) : ""));
    }
  }

  private void table(String name, List<Line> lines) {
    Map<String, String> was = rows(before.tables().get(name));
    Map<String, String> is = rows(after.tables().get(name));
    Set<String> keys = new LinkedHashSet<>(is.keySet());
    keys.addAll(was.keySet());
    int count = lines.size();
    for (String key : keys) {
      String old = was.getOrDefault(key, "");
      String now = is.getOrDefault(key, "");
      if (!old.equals(now)) {
        lines.add(Line.of(words.say("rehearsal.what.row", name, key), old, now));
      }
    }
    if (lines.size() == count) {
      String order = words.say("rehearsal.what.order");
      lines.add(Line.of(words.say("rehearsal.what.table", name), order, order));
    }
  }

  /** What each row gives, by what it is for. */
  private Map<String, String> rows(@Nullable Table table) {
    Map<String, String> rows = new LinkedHashMap<>();
    if (table != null) {
      for (Table.Row row : table.rows()) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
          @Nullable Unit unit = table.by().get(i).usUnit();
          cells.add(units.cell(row.cells().get(i), unit == null ? Units.ONE : unit));
        }
        rows.putIfAbsent(String.join("; ", cells), units.value(row.value()));
      }
    }
    return rows;
  }

  private void figure(String name, List<Line> lines) {
    lines.add(
        Line.of(words.say("rehearsal.what.figure"), figure(before, name), figure(after, name)));
  }

  private String figure(Pack pack, String name) {
    @Nullable Figure figure = WorkingCatalogue.standard().figure(name);
    @Nullable Double set = pack.figures().get(name);
    if (figure == null) {
      return "";
    }
    double value = set == null ? figure.value() : set;
    return units.figure(new Expr.FigureAmount(name, value, figure.unit()));
  }

  private void others(Difference difference, List<Line> lines) {
    @Nullable Rule old = difference.before();
    @Nullable Rule now = difference.after();
    if (old == null || now == null) {
      return;
    }
    Set<What> what = difference.what().what();
    if (what.contains(What.KIND)) {
      lines.add(
          Line.of(
              words.say("col.kind"),
              words.say("kind.short.one." + old.kind().label()),
              words.say("kind.short.one." + now.kind().label())));
    }
    if (what.contains(What.DAY)) {
      lines.add(
          Line.of(
              words.say("rehearsal.what.day"),
              texts.day(old.program().judgedBy()),
              texts.day(now.program().judgedBy())));
    }
    if (what.contains(What.SUBJECT)) {
      lines.add(Line.of(words.say("rehearsal.what.subject"), old.subject(), now.subject()));
    }
  }
}
