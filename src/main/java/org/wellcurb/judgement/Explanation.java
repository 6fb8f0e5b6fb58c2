package org.wellcurb.judgement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a rule has its outcome on a record: made only for what someone will read.
 *
 * @param outcome the outcome
 * @param requirement the requirement as a plain sentence
 * @param condition when the rule applies, as a plain sentence; empty if always
 * @param withNumbers the requirement with the record's numbers put in
 * @param deciding the comparison that decided; null where none did
 * @param workings the workings that were used, each once
 * @param needs keys of the entries that would settle a {@code cannot tell}, in order
 * @param remarks whole sentences on how it was judged: rounding allowed for, the bracketed limit
 *     used, depths reduced to ground, which dated text applied, which table row
 * @param text place among the rule's texts of the one that judged, from 0
 * @param mayBind places of the texts that may have been in force, where which of several was cannot
 *     be told; empty otherwise
 * @param isShortIfItApplies whether the record falls short if the rule applies, which cannot be
 *     told
 * @param mayNotApply whether it cannot be told that the rule applies at all
 * @param noRows whole sentences: tables that have no row for what is given, which no entry mends
 */
public record Explanation(
    Outcome outcome,
    String requirement,
    String condition,
    String withNumbers,
    @Nullable Deciding deciding,
    List<WorkingShown> workings,
    List<String> needs,
    List<String> remarks,
    int text,
    List<Integer> mayBind,
    boolean isShortIfItApplies,
    boolean mayNotApply,
    List<String> noRows) {

  public Explanation {
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    remarks = List.copyOf(remarks);
    mayBind = List.copyOf(mayBind);
    noRows = List.copyOf(noRows);
  }

  /** One for which every table that it reads has a row. */
  public Explanation(
      Outcome outcome,
      String requirement,
      String condition,
      String withNumbers,
      @Nullable Deciding deciding,
      List<WorkingShown> workings,
      List<String> needs,
      List<String> remarks,
      int text,
      boolean isShortIfItApplies) {
    this(
        outcome,
        requirement,
        condition,
        withNumbers,
        deciding,
        workings,
        needs,
        remarks,
        text,
        List.of(),
        isShortIfItApplies,
        false,
        List.of());
  }

  /** The same with one remark more, a whole sentence. */
  public Explanation with(String remark) {
    List<String> said = new ArrayList<>(remarks);
    said.add(remark);
    return new Explanation(
        outcome,
        requirement,
        condition,
        withNumbers,
        deciding,
        workings,
        needs,
        said,
        text,
        mayBind,
        isShortIfItApplies,
        mayNotApply,
        noRows);
  }
}
