package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.DatedText;

/**
 * In what a rule of one pack differs from the rule of the same id in another.
 *
 * @param what what differs; empty where a record fares the same under both
 * @param tables names of the tables that it reads and that differ
 * @param figures names of the figures that it takes, by a working or itself, and that differ
 */
public record RuleDifference(Set<What> what, List<String> tables, List<String> figures) {
  private static final Speech PLAIN = Speech.plain();

  /** What may differ. */
  public enum What {
    /** Only one of the packs has such a rule. */
    RULE,
    /** A text, its days, or where it applies. */
    TEXT,
    TABLE,
    FIGURE,
    /** The day that decides the text. */
    DAY,
    KIND,
    /** Of which subject it is: of several such rules the worst stands. */
    SUBJECT
  }

  public RuleDifference {
    what = Set.copyOf(what);
    tables = List.copyOf(tables);
    figures = List.copyOf(figures);
  }

  /** How a rule of one pack differs from that of another; null where a pack has none. */
  public static RuleDifference of(
      Pack packBefore, @Nullable Rule before, Pack packAfter, @Nullable Rule after) {
    if (before == null || after == null) {
      return new RuleDifference(Set.of(What.RULE), List.of(), List.of());
    }
    Set<What> what = EnumSet.noneOf(What.class);
    Set<String> read = new LinkedHashSet<>();
    Set<String> taken = new LinkedHashSet<>();
    for (Rule rule : List.of(before, after)) {
      UseProof.formulas(rule).forEach(formula -> collect(formula.tree(), read, taken));
    }
    List<String> tables =
        read.stream()
            .filter(name -> !same(packBefore.tables().get(name), packAfter.tables().get(name)))
            .toList();
    List<String> figures =
        taken.stream()
            .filter(
                name ->
                    !Objects.equals(packBefore.figures().get(name), packAfter.figures().get(name)))
            .toList();
    note(what, What.TABLE, !tables.isEmpty());
    note(what, What.FIGURE, !figures.isEmpty());
    note(what, What.KIND, before.kind() != after.kind());
    note(what, What.SUBJECT, !before.subject().equals(after.subject()));
    note(what, What.DAY, !before.program().judgedBy().equals(after.program().judgedBy()));
    boolean isSaid = !said(before).equals(said(after));
    // What no word tells apart may still be two formulas, where nothing else explains it.
    boolean isMeant = tables.isEmpty() && figures.isEmpty() && !meant(before).equals(meant(after));
    note(what, What.TEXT, isSaid || isMeant);
    return new RuleDifference(what, tables, figures);
  }

  /** True where nothing differs. */
  public boolean isNone() {
    return what.isEmpty();
  }

  private static void note(Set<What> into, What what, boolean differs) {
    if (differs) {
      into.add(what);
    }
  }

  private static boolean same(@Nullable Table a, @Nullable Table b) {
    if (a == null || b == null) {
      return a == null && b == null;
    }
    return a.by().equals(b.by()) && a.rows().equals(b.rows());
  }

  private static void collect(Expr expr, Set<String> tables, Set<String> figures) {
    if (expr instanceof Expr.TableAmount amount) {
      tables.add(amount.table().name());
    } else if (expr instanceof Expr.TableWord word) {
      tables.add(word.table().name());
    } else if (expr instanceof Expr.SameWord same) {
      collect(same.a(), tables, figures);
      collect(same.b(), tables, figures);
    } else if (expr instanceof Expr.WorkingAmount working) {
      figures.addAll(working.working().figures());
    } else if (expr instanceof Expr.FigureAmount figure) {
      figures.add(figure.name());
    }
    Parts.of(expr).forEach(part -> collect(part, tables, figures));
  }

  private static List<String> said(Rule rule) {
    List<String> all = new ArrayList<>(List.of(rule.ask(), said(rule.program().when())));
    for (DatedText text : rule.program().texts()) {
      all.add(text.from() + " " + text.until());
      all.add(said(text.when()));
      all.add(said(text.require()));
    }
    return all;
  }

  private static String said(@Nullable Formula formula) {
    return formula == null ? "" : Sentence.of(formula.tree(), PLAIN);
  }

  private static List<Expr> meant(Rule rule) {
    return UseProof.formulas(rule).stream().<Expr>map(Formula::tree).toList();
  }
}
