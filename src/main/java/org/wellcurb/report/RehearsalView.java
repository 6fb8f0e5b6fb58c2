package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.RuleDifference;
import org.wellcurb.screening.Finding;

/**
 * The same records under two packs: which outcomes change.
 *
 * @param before the pack in use
 * @param after the pack tried
 * @param asOf as-of date
 * @param records records screened under both
 * @param setAside rows that could not be read as records
 * @param turns what the pack after does to records
 * @param differences rules that differ, in the order of {@code rules}, whether or not they touch a
 *     record
 * @param rules changes by rule, as {@link Turn} orders them and then in the order of the pack
 *     after, then rules only the pack before has
 * @param years years of completion with a record that changes, the last first, at most as many as
 *     zones
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
    Turns turns,
    List<Difference> differences,
    List<RuleChange> rules,
    List<GroupChange> years,
    List<GroupChange> zones,
    List<GroupChange> contractors,
    List<RecordChange> changes,
    long totalChanges) {

  public RehearsalView {
    differences = List.copyOf(differences);
    rules = List.copyOf(rules);
    years = List.copyOf(years);
    zones = List.copyOf(zones);
    contractors = List.copyOf(contractors);
    changes = List.copyOf(changes);
  }

  /**
   * Records by what the pack tried does to them; a record may count in several.
   *
   * @param changed records with an outcome that changes
   * @param newlyShort those with a rule that falls short only under the pack after
   * @param firstShort those of them that fell short of no rule before
   * @param older those of the newly short that were completed before the edition of the pack after
   * @param noLongerShort those with a rule that falls short only under the pack before
   * @param noneShort those of them that fall short of no rule now
   * @param newlyUnknown those with a rule that can be told only under the pack before
   * @param noLongerUnknown those with one that can be told only under the pack after
   * @param newlyWaived those with a rule that a variance waives only under the pack after
   * @param noLongerWaived those with a variance that waives a rule only under the pack before
   */
  public record Turns(
      long changed,
      long newlyShort,
      long firstShort,
      long older,
      long noLongerShort,
      long noneShort,
      long newlyUnknown,
      long noLongerUnknown,
      long newlyWaived,
      long noLongerWaived) {}

  /**
   * A rule that differs between the packs.
   *
   * @param before the rule of the pack before; null where it has none
   * @param after the rule of the pack after; null where it has none
   * @param what in what they differ
   * @param judgedBefore records to which the rule of the pack before applies
   * @param judgedAfter records to which that of the pack after does
   * @param shortBefore records that fall short of the rule of the pack before
   * @param shortAfter records that fall short of that of the pack after
   * @param changed records whose outcome changes
   * @param older records newly short that were completed before the edition of the pack after
   */
  public record Difference(
      @Nullable Rule before,
      @Nullable Rule after,
      RuleDifference what,
      long judgedBefore,
      long judgedAfter,
      long shortBefore,
      long shortAfter,
      long changed,
      long older) {

    /** The rule as the pack after has it where it has it. */
    public Rule rule() {
      return after != null ? after : Objects.requireNonNull(before);
    }
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
   * @param completed the day of completion, as written; may be empty
   * @param rule the rule, as the pack after has it where it has it
   * @param from outcome before; null where there is no such rule
   * @param to outcome after; null where there is no such rule
   * @param was what decided before; null where there is no such rule, or nothing was compared
   * @param is what decided after; null likewise
   */
  public record RecordChange(
      String recordId,
      String file,
      long row,
      String completed,
      Rule rule,
      @Nullable Outcome from,
      @Nullable Outcome to,
      @Nullable Deciding was,
      @Nullable Deciding is) {

    /** What was compared: by the pack after, or by that before where it alone compares. */
    Deciding compared() {
      return is != null ? is : was != null ? was : Finding.NOTHING;
    }
  }

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
