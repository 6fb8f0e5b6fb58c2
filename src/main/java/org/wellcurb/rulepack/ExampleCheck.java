package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Scope;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.formula.Truth;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Variance;
import org.wellcurb.record.WellRecord;

/** Judges examples as of the pack's edition. One per pack; not shared by threads. */
final class ExampleCheck {
  private final Pack pack;
  private final Judge judge;
  private final ExampleForms forms = new ExampleForms();
  private final Scope scope;

  ExampleCheck(Pack pack) {
    this.pack = pack;
    judge = new Judge(Catalogue.standard(), pack.edition(), pack.mustApply());
    scope = new PackScope(pack.tables(), pack.figures());
  }

  /** Runs the examples of a pack's own rules, and names each that fails. */
  static void all(Pack pack, List<RuleReader.At> rules, Problems problems) {
    ExampleCheck check = new ExampleCheck(pack);
    for (RuleReader.At at : rules) {
      boolean isTurned = check.isTurnedRound(at.rule());
      for (ExampleReader.At example : at.examples()) {
        Outcome outcome = check.outcome(at.rule(), example.example());
        if (outcome != example.example().expect() && !check.saysUnreadable(example, problems)) {
          problems.at(
              example.expectAt(),
              "this example of "
                  + at.rule().id()
                  + " comes out as '"
                  + outcome.label()
                  + "'"
                  + check.why(at.rule(), example.example(), outcome),
              isTurned
                  ? "meets and falls short look exchanged, in all its examples: exchange them, or turn"
                      + " the rule round"
                  : "mend the example or the rule");
        }
      }
    }
  }

  /**
   * True if all that should meet the rule fall short of it, and all that should fall short meet.
   */
  private boolean isTurnedRound(Rule rule) {
    Set<Outcome> expected = EnumSet.noneOf(Outcome.class);
    for (Example example : rule.examples()) {
      Outcome expect = example.expect();
      if (expect == Outcome.MEETS || expect == Outcome.FALLS_SHORT) {
        expected.add(expect);
        Outcome other = expect == Outcome.MEETS ? Outcome.FALLS_SHORT : Outcome.MEETS;
        if (outcome(rule, example) != other) {
          return false;
        }
      }
    }
    return expected.size() == 2;
  }

  /** What the rule makes of the example. */
  Outcome outcome(Rule rule, Example example) {
    WellRecord record = forms.record(example);
    judge.take(record);
    Outcome outcome = Outcome.at(judge.outcome(rule.program()));
    boolean canBeWaived = outcome == Outcome.FALLS_SHORT || outcome == Outcome.CANNOT_TELL;
    for (Variance variance : record.variances()) {
      if (canBeWaived && variance.rule().equals(rule.id()) && pack.mayWaive(rule.id())) {
        return Outcome.WAIVED;
      }
    }
    return outcome;
  }

  /** Names each text of an example of which nothing can be read; false where there is none. */
  private boolean saysUnreadable(ExampleReader.At at, Problems problems) {
    WellRecord record = forms.record(at.example());
    boolean any = false;
    for (String key : at.example().given().keySet()) {
      int entry = record.catalogue().index(key);
      Json place = at.givenAt().get(key);
      boolean isUnread =
          record.state(entry) == WellRecord.UNREADABLE || record.note(entry).isUnsure();
      if (isUnread && place != null) {
        any = true;
        String written = record.written(entry);
        problems.at(
            place,
            "nothing can be read of '" + written + "' for " + key,
            record.note(entry) == Note.AMBIGUOUS_COMMA
                ? "write a decimal point: " + written.replace(',', '.')
                : mend(record.catalogue().entry(entry), written));
      }
    }
    return any;
  }

  private static String mend(Entry entry, String written) {
    if (!entry.choices().isEmpty()) {
      return Mends.nearest(written, entry.choices(), "");
    }
    return switch (entry.kind()) {
      case DATE -> "write a day, such as 2024-04-01";
      case YES_NO -> "write yes or no";
      default -> "write an amount, such as 50" + suffix(entry);
    };
  }

  private static String suffix(Entry entry) {
    @Nullable Unit unit = entry.usUnit();
    return unit == null || unit.symbol().isEmpty() ? "" : " " + unit.symbol();
  }

  /** Why the rule came out so on the example judged last. */
  private String why(Rule rule, Example example, Outcome outcome) {
    if (example.expect() == Outcome.WAIVED) {
      return pack.mayWaive(rule.id())
          ? ": no variance in it names " + rule.id()
          : ": the pack does not list it as waivable";
    }
    Explainer explainer = new Explainer(judge, scope, Speech.plain());
    if (outcome == Outcome.CANNOT_TELL) {
      List<String> needs = explainer.needs(rule.program()).stream().map(Entry::key).toList();
      return needs.isEmpty() ? lacking(rule) : ": it needs " + String.join(", ", needs);
    }
    if (outcome == Outcome.NOT_APPLICABLE) {
      return unasked(rule, explainer.parts());
    }
    String numbers = explainer.explain(rule.program()).withNumbers();
    return numbers.isEmpty()
        ? ""
        : (outcome == Outcome.FALLS_SHORT ? ": this does not hold: " : ": this holds: ") + numbers;
  }

  /** Where nothing is asked for, a table lacks a row for what it is read by. */
  private String lacking(Rule rule) {
    List<String> tables =
        pack.tables().values().stream()
            .filter(table -> ChangedRule.reads(rule.program(), table))
            .map(Table::name)
            .toList();
    return tables.isEmpty()
        ? ""
        : ": look whether table " + String.join(" or ", tables) + " has a row for it";
  }

  /** Why a rule asks nothing: no text is in force, its condition is false, or n/a takes it away. */
  private String unasked(Rule rule, Evaluation at) {
    List<DatedText> texts = judge.inForce(rule.program());
    if (texts.isEmpty()) {
      return ": no text of it is in force on the day that decides";
    }
    List<Formula> all = new ArrayList<>();
    add(rule.program().when(), all);
    for (DatedText text : texts) {
      add(text.when(), all);
    }
    for (Formula when : all) {
      if (at.truth(when.tree()) == Truth.FALSE) {
        return ": its when does not hold: " + Sentence.withNumbers(when.tree(), Speech.plain(), at);
      }
    }
    texts.forEach(text -> add(text.require(), all));
    for (Formula formula : all) {
      for (Entry entry : formula.reads()) {
        if (at.truth(formula.tree()) == Truth.VOID
            && at.frame().state(entry.index()) == WellRecord.NOT_APPLICABLE) {
          return ": n/a in "
              + entry.key()
              + " takes it away; to keep a comparison that does not need it, join the two with and"
              + " or or";
        }
      }
    }
    return "";
  }

  private static void add(@Nullable Formula formula, List<Formula> into) {
    if (formula != null) {
      into.add(formula);
    }
  }
}
