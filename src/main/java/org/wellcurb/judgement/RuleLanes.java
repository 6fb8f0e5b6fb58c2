package org.wellcurb.judgement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.LaneCompiler;
import org.wellcurb.formula.TruthLanes;

/** A rule compiled for records side by side. */
final class RuleLanes {
  private final RuleProgram program;
  private final @Nullable TruthLanes when;
  private final List<Text> texts = new ArrayList<>();

  /**
   * One of its texts.
   *
   * @param when when it applies beyond the rule's own condition; null if always
   * @param require what it requires; null for a rule that only a person can judge
   * @param isMoved whether it, or its rule's condition, reads a depth that may have to be moved
   */
  record Text(
      DatedText text, @Nullable TruthLanes when, @Nullable TruthLanes require, boolean isMoved) {}

  RuleLanes(RuleProgram program, LaneCompiler compiler) {
    this.program = program;
    when = condition(program.when(), compiler);
    for (DatedText text : program.texts()) {
      texts.add(
          new Text(
              text,
              condition(text.when(), compiler),
              condition(text.require(), compiler),
              (text.datums() | program.datums()) != 0));
    }
  }

  private static @Nullable TruthLanes condition(@Nullable Formula formula, LaneCompiler compiler) {
    return formula == null ? null : compiler.condition(formula);
  }

  RuleProgram program() {
    return program;
  }

  /** When it applies; null if always. */
  @Nullable TruthLanes when() {
    return when;
  }

  /** Its texts, the earliest first. */
  List<Text> texts() {
    return texts;
  }
}
