package org.wellcurb.rulepack;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Nearest;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where a table of words and what it is compared with can never be the same: a word that is no
 * choice of the entry, so that every record of that row falls short, or a word that no row gives.
 *
 * <p>It is doubtful and not refused: a word such as {@code any} may be asked for by its name beside
 * the comparison, and then it is in order.
 */
final class WordProof {
  private final ProofNotes notes;
  private final Set<String> ownTables;
  private final Set<String> said = new HashSet<>();

  private WordProof(ProofNotes notes) {
    this.notes = notes;
    ownTables = new HashSet<>(notes.own("table"));
  }

  static void run(Pack pack, ProofNotes notes) {
    WordProof proof = new WordProof(notes);
    Set<Rule> own = new HashSet<>(notes.ownRules());
    for (Rule rule : pack.rules()) {
      Set<String> asked = new HashSet<>();
      List<Formula> formulas = UseProof.formulas(rule);
      formulas.forEach(formula -> asked(formula.tree(), asked));
      formulas.forEach(formula -> proof.look(formula.tree(), rule, own.contains(rule), asked));
    }
  }

  /** The words that a rule asks of a table by name. */
  private static void asked(Expr expr, Set<String> into) {
    if (expr instanceof Expr.IsOneOf is && is.word() instanceof Expr.TableWord of) {
      is.words().forEach(word -> into.add(of.table().name() + " " + word));
    }
    Parts.of(expr).forEach(part -> asked(part, into));
  }

  private void look(Expr expr, Rule rule, boolean isOwn, Set<String> asked) {
    if (expr instanceof Expr.SameWord same) {
      if (same.a() instanceof Expr.EntryWord e && same.b() instanceof Expr.TableWord t) {
        choices(e.entry(), t.table(), rule, isOwn, asked);
      } else if (same.b() instanceof Expr.EntryWord e && same.a() instanceof Expr.TableWord t) {
        choices(e.entry(), t.table(), rule, isOwn, asked);
      }
    } else if (expr instanceof Expr.IsOneOf is && is.word() instanceof Expr.TableWord of) {
      given(is, of.table(), rule, isOwn);
    }
    Parts.of(expr).forEach(part -> look(part, rule, isOwn, asked));
  }

  private void choices(Entry entry, Table table, Rule rule, boolean isOwn, Set<String> asked) {
    if (entry.choices().isEmpty()) {
      return;
    }
    List<String> choices = entry.choices().stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
    for (Table.Row row : table.rows()) {
      if (row.value() instanceof Table.Word word
          && !choices.contains(word.word())
          && !asked.contains(table.name() + " " + word.word())) {
        int meant = entry.choice(word.word());
        @Nullable String near = meant >= 0 ? choices.get(meant) : Nearest.of(word.word(), choices);
        say(
            table,
            rule,
            isOwn,
            "'"
                + word.shown()
                + "' is not a choice of "
                + entry.key()
                + ", to which rule "
                + rule.id()
                + " compares it, so that no record can be it; "
                + (near == null
                    ? "the choices are " + String.join(", ", entry.choices())
                    : "did you mean '" + near + "'?"));
      }
    }
  }

  private void given(Expr.IsOneOf is, Table table, Rule rule, boolean isOwn) {
    Set<String> gives = new LinkedHashSet<>();
    for (Table.Row row : table.rows()) {
      if (row.value() instanceof Table.Word word) {
        gives.add(word.word());
      }
    }
    for (String word : is.words()) {
      if (!gives.contains(word)) {
        @Nullable String near = Nearest.of(word, gives);
        say(
            table,
            rule,
            isOwn,
            "no row gives '"
                + word
                + "', which rule "
                + rule.id()
                + " asks of it; "
                + (near == null
                    ? "its words are " + String.join(", ", gives)
                    : "did you mean '" + near + "'?"));
      }
    }
  }

  private void say(Table table, Rule rule, boolean isOwn, String what) {
    boolean isOwnTable = ownTables.contains(table.name());
    if ((isOwn || isOwnTable) && said.add(table.name() + " " + what)) {
      notes.say(
          Weight.DOUBTFUL,
          isOwnTable ? "table" : "rule",
          isOwnTable ? table.name() : rule.id(),
          isOwnTable ? what : "of table " + table.name() + ": " + what);
    }
  }
}
