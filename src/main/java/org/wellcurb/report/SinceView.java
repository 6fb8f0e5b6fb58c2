package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What changed since an earlier report.
 *
 * @param asOf as-of date of this run
 * @param earlierAsOf as-of date of the earlier one
 * @param asOfChanged whether they differ
 * @param versionChanged whether another version of the program wrote the earlier one
 * @param rulesMarked whether the earlier one keeps what each rule read
 * @param newMaybeByRules new findings of changed records that may be due to the rules, the day or
 *     the program, which changed too
 * @param packsChanged ids of packs whose files are not the same in both
 * @param packsAdded ids of packs that did not judge in the earlier one
 * @param counts findings by what became of them
 * @param contractors the same by licence, at most {@link Cap#CONTRACTORS_ON_PAGE}
 * @param rules the same by rule, at most as many
 * @param changes findings that are not still there, this run's order first, at most {@link
 *     Cap#SINCE_ON_PAGE}
 * @param totalChanges how many there are
 * @param told findings of numbers that repeat, by how their record was told from others of its
 *     number
 */
public record SinceView(
    LocalDate asOf,
    String earlierAsOf,
    boolean asOfChanged,
    boolean versionChanged,
    boolean rulesMarked,
    long newMaybeByRules,
    List<String> packsChanged,
    List<String> packsAdded,
    SinceCounts counts,
    List<Group> contractors,
    List<Group> rules,
    List<SinceCsv.Changed> changes,
    long totalChanges,
    Map<Told, Long> told) {

  /** How it was told which record of an earlier report a record is. */
  public enum Told {
    BY_NUMBER,
    BY_WHAT_IT_SAYS,
    BY_ROW,
    AS_THE_ONLY_ONE_LEFT,
    BY_NOTHING;

    private static final Told[] ALL = values();

    /** The way at this place among all. */
    public static Told of(int ordinal) {
      return ALL[ordinal];
    }
  }

  /**
   * Findings of one licence or rule.
   *
   * @param apart what tells it from another of this name; empty where no other has it
   */
  public record Group(String name, String apart, SinceCounts counts) {}

  public SinceView {
    packsChanged = List.copyOf(packsChanged);
    packsAdded = List.copyOf(packsAdded);
    contractors = List.copyOf(contractors);
    rules = List.copyOf(rules);
    changes = List.copyOf(changes);
    told = Map.copyOf(told);
  }
}
