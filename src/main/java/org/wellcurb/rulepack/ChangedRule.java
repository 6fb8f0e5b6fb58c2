package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.RuleProgram;

/** Rules with one formula or one row of a table changed, for trying what examples make of it. */
final class ChangedRule {

  /**
   * A formula of a rule.
   *
   * @param text number of its text from 1; 0 for the condition of the whole rule
   * @param isRequired true for what is required, false for when that applies
   */
  record Place(RuleProgram program, int text, boolean isRequired, Formula formula) {

    /** The rule with another formula here. */
    RuleProgram with(Formula other) {
      List<DatedText> texts = new ArrayList<>(program.texts());
      if (text > 0) {
        DatedText old = texts.get(text - 1);
        texts.set(
            text - 1,
            isRequired ? changed(old, old.when(), other) : changed(old, other, old.require()));
      }
      return new RuleProgram(
          text > 0 ? program.when() : other, texts, program.judgedBy(), program.omission());
    }
  }

  private ChangedRule() {}

  /** True of a rule that only a person can judge: it needs no examples. */
  static boolean isAsked(RuleProgram program) {
    return program.texts().stream().allMatch(text -> text.require() == null);
  }

  /** All formulas of a rule. */
  static List<Place> places(RuleProgram program) {
    List<Place> places = new ArrayList<>();
    add(places, program, 0, false, program.when());
    for (int i = 0; i < program.texts().size(); i++) {
      add(places, program, i + 1, false, program.texts().get(i).when());
      add(places, program, i + 1, true, program.texts().get(i).require());
    }
    return places;
  }

  private static void add(
      List<Place> places,
      RuleProgram program,
      int text,
      boolean isRequired,
      @Nullable Formula formula) {
    if (formula != null) {
      places.add(new Place(program, text, isRequired, formula));
    }
  }

  private static DatedText changed(
      DatedText text, @Nullable Formula when, @Nullable Formula require) {
    return new DatedText(text.from(), text.until(), when, require, text.knownFrom());
  }

  /** True if a rule reads a table. */
  static boolean reads(RuleProgram program, Table table) {
    return places(program).stream()
        .anyMatch(place -> Parts.any(place.formula.tree(), part -> isOf(part, table)));
  }

  private static boolean isOf(Expr part, Table table) {
    return (part instanceof Expr.TableAmount a && a.table().name().equals(table.name()))
        || (part instanceof Expr.TableWord w && w.table().name().equals(table.name()));
  }

  /**
   * The table with what a written row gives changed: less, and more; or to a word that the rule
   * takes otherwise.
   */
  static List<Table> rows(RuleProgram program, Table table, int written) {
    Set<String> asked = asked(program, table);
    List<Table> changed = new ArrayList<>();
    List<Table.Row> rows = table.rows();
    int ways = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (WrittenRows.number(table, i) == written) {
        ways = Neighbours.of(rows.get(i).value(), asked).size();
      }
    }
    for (int way = 0; way < ways; way++) {
      List<Table.Row> others = new ArrayList<>();
      for (int i = 0; i < rows.size(); i++) {
        Table.Row row = rows.get(i);
        others.add(
            WrittenRows.number(table, i) == written
                ? new Table.Row(row.cells(), Neighbours.of(row.value(), asked).get(way))
                : row);
      }
      changed.add(new Table(table.name(), table.by(), table.gives(), others));
    }
    return changed;
  }

  /**
   * The words that a rule asks of a table by their name; none where it compares an entry with it,
   * for then a row is met by the entry's own word.
   */
  private static Set<String> asked(RuleProgram program, Table table) {
    Set<String> asked = new LinkedHashSet<>();
    boolean isCompared = false;
    for (Place place : places(program)) {
      isCompared |=
          Parts.any(
              place.formula.tree(),
              part ->
                  part instanceof Expr.SameWord same
                      && (isOf(same.a(), table) || isOf(same.b(), table)));
      asked(place.formula.tree(), table, asked);
    }
    return isCompared ? Set.of() : asked;
  }

  private static void asked(Expr part, Table table, Set<String> into) {
    if (part instanceof Expr.IsOneOf is && isOf(is.word(), table)) {
      into.addAll(is.words());
    }
    Parts.of(part).forEach(each -> asked(each, table, into));
  }

  /** The rule reading another table of the same name. */
  static RuleProgram with(RuleProgram program, Table table) {
    RuleProgram changed = program;
    for (Place place : places(program)) {
      Expr tree = with(place.formula.tree(), table);
      changed =
          new Place(changed, place.text, place.isRequired, place.formula)
              .with(place.formula.with((Expr.Condition) tree));
    }
    return changed;
  }

  private static Expr with(Expr part, Table table) {
    if (isOf(part, table)) {
      return part instanceof Expr.TableAmount a
          ? new Expr.TableAmount(table, a.dimension())
          : new Expr.TableWord(table);
    }
    List<Expr> parts = new ArrayList<>();
    Parts.of(part).forEach(each -> parts.add(with(each, table)));
    return parts.isEmpty() ? part : Parts.with(part, parts);
  }
}
