package org.wellcurb.rulepack;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Statement.Weight;

/** Says what a pack has and does not use, and what its rules rest on that they should not. */
final class UseProof {
  /** What edition or note says of a source not read in the text itself, and how it is called. */
  private static final Map<String, String> DOUBTS = doubts();

  private final Pack pack;
  private final ProofNotes notes;
  private final ExampleForms forms = new ExampleForms();
  private final Set<String> used = new HashSet<>();

  private static Map<String, String> doubts() {
    Map<String, String> doubts = new LinkedHashMap<>();
    doubts.put("from memory", "quoted from memory");
    doubts.put("unofficial", "an unofficial copy");
    doubts.put("second-hand", "second-hand");
    doubts.put("inferred", "inferred in part");
    return doubts;
  }

  private UseProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
  }

  static void run(Pack pack, ProofNotes notes) {
    new UseProof(pack, notes).run();
  }

  private void run() {
    for (Rule rule : pack.rules()) {
      for (Formula formula : formulas(rule)) {
        collect(formula.tree());
      }
    }
    Set<Source> sources = new HashSet<>();
    for (Rule rule : pack.rules()) {
      if (rule.pack().equals(pack.id())) {
        sources.add(rule.source());
        sources.addAll(rule.textSources());
      }
    }
    for (Rule rule : notes.ownRules()) {
      refuseMemory(rule);
      sayUnseen(rule);
      sayUnreadable(rule);
    }
    for (String name : notes.own("table")) {
      Table table = pack.tables().get(name);
      Source source = table == null ? null : pack.sources().get(table.source());
      if (source != null) {
        sources.add(source);
      }
    }
    for (String name : notes.own("source")) {
      if (!sources.contains(pack.sources().get(name))) {
        notes.say(Weight.DOUBTFUL, "source", name, "no rule of the pack rests on it");
      }
    }
    sayUnused("table", "no rule reads it");
    sayUnused("figure", "no rule reads a working that takes it");
  }

  private void sayUnused(String what, String said) {
    for (String name : notes.own(what)) {
      if (!used.contains(what + " " + name)) {
        notes.say(Weight.DOUBTFUL, what, name, said);
      }
    }
  }

  /** All formulas of a rule. */
  static List<Formula> formulas(Rule rule) {
    List<Formula> formulas = new java.util.ArrayList<>();
    add(rule.program().when(), formulas);
    for (DatedText text : rule.program().texts()) {
      add(text.when(), formulas);
      add(text.require(), formulas);
    }
    return formulas;
  }

  private static void add(@Nullable Formula formula, List<Formula> into) {
    if (formula != null) {
      into.add(formula);
    }
  }

  private void collect(Expr expr) {
    if (expr instanceof Expr.TableAmount amount) {
      used.add("table " + amount.table().name());
    } else if (expr instanceof Expr.TableWord word) {
      used.add("table " + word.table().name());
    } else if (expr instanceof Expr.WorkingAmount working) {
      working.working().figures().forEach(name -> used.add("figure " + name));
    } else if (expr instanceof Expr.FigureAmount figure) {
      used.add("figure " + figure.name());
    }
    Parts.of(expr).forEach(this::collect);
  }

  /** What was not read in a text may advise, but not bind. */
  private void refuseMemory(Rule rule) {
    boolean binds = rule.kind() == FindingKind.DEFICIENCY || rule.kind() == FindingKind.OMISSION;
    for (Source source : rule.textSources()) {
      String note = (source.edition() + " " + source.note()).toLowerCase(Locale.ROOT);
      for (Map.Entry<String, String> doubt : DOUBTS.entrySet()) {
        if (binds && note.contains(doubt.getKey())) {
          notes.say(
              Weight.DOUBTFUL,
              "rule",
              rule.id(),
              "its source "
                  + source.id()
                  + " is "
                  + doubt.getValue()
                  + ": it may be an advisory at most");
          return;
        }
      }
    }
  }

  /** A row of a table has no column for the layers of a log: once for each such entry. */
  private void sayUnseen(Rule rule) {
    Set<String> unseen = new TreeSet<>();
    for (Formula formula : formulas(rule)) {
      for (Entry entry : formula.reads()) {
        if (entry.kind() == Kind.LIST && !entry.key().equals("record.variances")) {
          unseen.add(entry.key());
        }
      }
    }
    for (String key : unseen) {
      notes.say(
          Weight.NOTE,
          "rule",
          rule.id(),
          "it reads "
              + key
              + ", which a table holds only where a header map joins the rows of another to it");
    }
  }

  /** A slip in an example can hide behind the outcome that it happens to have. */
  private void sayUnreadable(Rule rule) {
    for (Example example : rule.examples()) {
      WellRecord record = forms.record(example);
      for (String key : example.given().keySet()) {
        int entry = record.catalogue().index(key);
        if (record.state(entry) == WellRecord.UNREADABLE) {
          notes.say(
              Weight.DOUBTFUL,
              "rule",
              rule.id(),
              "an example gives "
                  + key
                  + " as '"
                  + record.written(entry)
                  + "', which cannot be read");
        }
      }
    }
  }
}
