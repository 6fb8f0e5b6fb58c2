package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;

/**
 * The same records under two packs: which outcomes change.
 *
 * @param before the pack in use
 * @param after the pack tried
 * @param asOf as-of date
 * @param records records screened under both
 * @param setAside rows that could not be read as records
 * @param changedRecords records with an outcome that changes
 * @param newlyShort records with a rule that falls short only under the pack after
 * @param noLongerShort records with a rule that falls short only under the pack before
 * @param rules changes by rule, as {@link Turn} orders them and then in the order of the pack
 *     after, then rules only the pack before has
 * @param zones zones with a record that changes, most first, at most {@link
 *     Cap#CONTRACTORS_ON_PAGE}
 * @param contractors drillers' licences with one, most first, at most as many
 * @param changes changes by record, as {@link Turn} orders them and then in input order, at most
 *     {@link Cap#CHANGES_ON_PAGE}
 * @param totalChanges how many there are
 */
public record RehearsalView(
    Pack before,
    Pack after,
    LocalDate asOf,
    long records,
    long setAside,
    long changedRecords,
    long newlyShort,
    long noLongerShort,
    List<RuleChange> rules,
    List<GroupChange> zones,
    List<GroupChange> contractors,
    List<RecordChange> changes,
    long totalChanges) {

  public RehearsalView {
    rules = List.copyOf(rules);
    zones = List.copyOf(zones);
    contractors = List.copyOf(contractors);
    changes = List.copyOf(changes);
  }

  /** What a change is to whoever answers for the record, the weightiest first. */
  public enum Turn {
    NEWLY_SHORT,
    NO_LONGER_SHORT,
    OTHER;

    /** Of an outcome that changes; null where there is no such rule. */
    public static Turn of(@Nullable Outcome from, @Nullable Outcome to) {
      return to == Outcome.FALLS_SHORT
          ? NEWLY_SHORT
          : from == Outcome.FALLS_SHORT ? NO_LONGER_SHORT : OTHER;
    }
  }

  /**
   * How often one rule changes one outcome into another.
   *
   * @param rule id of the rule
   * @param title what it asks
   * @param from outcome under the pack before; null where it has no such rule
   * @param to outcome under the pack after; null where it has no such rule
   * @param records how many records
   */
  public record RuleChange(
      String rule, String title, @Nullable Outcome from, @Nullable Outcome to, long records) {}

  /**
   * An outcome of one record that changes.
   *
   * @param recordId number of the record
   * @param file input
   * @param row row in it
   * @param title what the rule asks
   * @param from outcome before; null where there is no such rule
   * @param to outcome after; null where there is no such rule
   */
  public record RecordChange(
      String recordId,
      String file,
      long row,
      String title,
      @Nullable Outcome from,
      @Nullable Outcome to) {}

  /**
   * Records of one zone or contractor.
   *
   * @param name as written; empty for records that name none
   * @param records its records
   * @param changed those with an outcome that changes
   * @param newlyShort those with a rule that falls short only under the pack after
   * @param noLongerShort those with a rule that falls short only under the pack before
   */
  public record GroupChange(
      String name, long records, long changed, long newlyShort, long noLongerShort) {}
}
