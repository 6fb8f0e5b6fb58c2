package org.wellcurb.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/** One rule, written in a test and judged on records written in a test. */
public final class OneRule {
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  private final TestScope scope = new TestScope();
  private final List<DatedText> texts = new ArrayList<>();
  private final List<String> mustApply = new ArrayList<>();
  private @Nullable Formula when;
  private JudgedBy judgedBy = entry("dates.completed");
  private boolean omission;

  /** A rule that requires this. */
  public static OneRule requires(String require) {
    OneRule rule = new OneRule();
    rule.texts.add(new DatedText(null, null, null, rule.formula(require)));
    return rule;
  }

  /** A rule of dated texts, see {@link #text}. */
  public static OneRule dated() {
    return new OneRule();
  }

  /** A rule that needs a table. */
  public static OneRule withTable(Table table) {
    OneRule rule = new OneRule();
    rule.scope.add(table);
    return rule;
  }

  public OneRule text(@Nullable String from, @Nullable String until, String require) {
    texts.add(
        new DatedText(
            from == null ? null : LocalDate.parse(from),
            until == null ? null : LocalDate.parse(until),
            null,
            formula(require)));
    return this;
  }

  public OneRule when(String condition) {
    when = formula(condition);
    return this;
  }

  public OneRule judgedBy(JudgedBy day) {
    judgedBy = day;
    return this;
  }

  public OneRule mustApply(String key) {
    mustApply.add(key);
    return this;
  }

  public OneRule omission() {
    omission = true;
    return this;
  }

  public static JudgedBy entry(String key) {
    Catalogue catalogue = Catalogue.standard();
    return new JudgedBy.Entry(catalogue.entry(catalogue.index(key)));
  }

  private Formula formula(String text) {
    try {
      return Formula.condition(text, scope);
    } catch (FormulaException e) {
      throw new AssertionError(text + ": " + e.getMessage() + "; " + e.mend(), e);
    }
  }

  private RuleProgram program() {
    return new RuleProgram(when, texts, judgedBy, omission);
  }

  /**
   * The outcome on a record of these keys and texts, judged alone and side by side. Without a
   * datum, depths are from ground.
   */
  public Outcome on(String... keysAndTexts) {
    Judge judge = judge(keysAndTexts);
    Outcome outcome = Outcome.at(judge.outcome(program()));
    assertEquals(outcome, sideBySide(keysAndTexts), "the outcome side by side with others");
    return outcome;
  }

  private Outcome sideBySide(String... keysAndTexts) {
    LaneJudge judge = new LaneJudge(Catalogue.standard(), AS_OF, mustApply, List.of(program()));
    judge.clear();
    judge.take(0, record(keysAndTexts));
    byte[][] outcomes = {{(byte) Outcome.NOT_APPLICABLE.ordinal()}};
    judge.judge(0, 1, outcomes);
    return Outcome.at(outcomes[0][0]);
  }

  /** What decided, as tables of outcomes hold it. */
  public @Nullable Deciding decided(String... keysAndTexts) {
    return new Explainer(judge(keysAndTexts), scope, Speech.plain()).deciding(program());
  }

  /** The outcome explained. */
  public Explanation explained(String... keysAndTexts) {
    return new Explainer(judge(keysAndTexts), scope, Speech.plain()).explain(program());
  }

  private Judge judge(String... keysAndTexts) {
    Judge judge = new Judge(Catalogue.standard(), AS_OF, mustApply);
    judge.take(record(keysAndTexts));
    return judge;
  }

  static WellRecord record(String... keysAndTexts) {
    Map<String, String> given = new LinkedHashMap<>();
    given.put("record.datum", "ground");
    for (int i = 0; i < keysAndTexts.length; i += 2) {
      given.put(keysAndTexts[i], keysAndTexts[i + 1]);
    }
    return RecordReader.of(given);
  }
}
