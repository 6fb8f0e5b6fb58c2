package org.wellcurb.batch;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.FirstFinding;
import org.wellcurb.report.KindCounts;
import org.wellcurb.report.Place;
import org.wellcurb.report.RecordLine;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;

/** Keeps the records that the batch page lists and those that get a sheet, the worst first. */
final class Listing {
  private final Plan plan;
  private final Speakers speakers;
  private final FirstFinding firstFinding;

  /** Each pack's rules are objects of its own, so one map holds the rules of all. */
  private final IdentityHashMap<Rule, Harm> harms = new IdentityHashMap<>();

  Listing(Plan plan, Speakers speakers) {
    this.plan = plan;
    this.speakers = speakers;
    firstFinding = new FirstFinding(plan.request().output().style());
    for (Pack pack : plan.packs()) {
      pack.rules().forEach(rule -> harms.put(rule, Harm.of(rule)));
    }
  }

  /**
   * A record that was screened.
   *
   * @param part number of its part
   * @param place its place in the part
   * @param pack place of the pack that judged it
   * @param record the record, which is filled anew for the next
   * @param open its findings that nobody has settled
   * @param counts these by kind
   * @param isFlagged whether it has any finding, settled ones too
   * @param isUnfit whether its water cannot wait, whatever rules its pack has
   * @param cannotTell rules that cannot be told of it
   * @param where where a map shows it; null if none does
   */
  record Screened(
      long part,
      int place,
      int pack,
      WellRecord record,
      List<Finding> open,
      KindCounts counts,
      boolean isFlagged,
      boolean isUnfit,
      int cannotTell,
      @Nullable Place where) {

    Screened {
      open = List.copyOf(open);
    }
  }

  /** Whether a record without a finding may be kept at all. */
  boolean isAnyKept(PartResult result) {
    return plan.request().output().sheets() == SheetsFor.ALL || result.first == null;
  }

  /** Keeps the record, if it is among the worst. */
  void keep(Screened seen, String driller, String installer, PartResult result) {
    SheetsFor sheets = plan.request().output().sheets();
    KindCounts counts = seen.counts();
    Harm harm = seen.isUnfit() ? Harm.WATER : harm(seen.record(), seen.open());
    String file = seen.record().file();
    long row = seen.record().row();
    // Numbers are compared first: hardly any record comes before what is kept already.
    boolean mayBeListed =
        (!seen.open().isEmpty() || seen.isUnfit())
            && plan.bars().mayBeListed(counts, harm, file, row)
            && Bars.isBefore(counts, harm, file, row, result.lines.bar());
    boolean mayHaveSheet =
        ((seen.isFlagged() || seen.isUnfit()) ? sheets != SheetsFor.NONE : sheets == SheetsFor.ALL)
            && plan.bars().mayHaveSheet(counts, harm, file, row);
    if (!mayBeListed && !mayHaveSheet && result.first != null) {
      return;
    }
    RecordLine line =
        new RecordLine(
            seen.record().id(),
            file,
            row,
            plan.packs().get(seen.pack()).id(),
            driller,
            installer,
            counts,
            harm,
            seen.cannotTell(),
            first(seen),
            "",
            seen.where());
    if (mayBeListed) {
      result.lines.offer(line);
    }
    if (result.first == null) {
      result.first = flagged(seen, line, seen.record().copy());
    }
    if (mayHaveSheet && result.flagged.wants(flagged(seen, line, seen.record()))) {
      result.flagged.offer(flagged(seen, line, seen.record().copy()));
    }
  }

  private String first(Screened seen) {
    return seen.isUnfit()
        ? firstFinding.ofWater(seen.record())
        : firstFinding.of(speakers.said(seen.record(), seen.pack(), seen.open()));
  }

  private boolean isOfWater(List<Finding> findings) {
    return findings.stream().anyMatch(each -> harms.get(each.rule()) == Harm.WATER);
  }

  private static Flagged flagged(Screened seen, RecordLine line, WellRecord record) {
    return new Flagged(seen.part(), seen.place(), seen.pack(), line, record);
  }

  /** What cannot wait; else the soonest harm of the findings of the gravest kind. */
  private Harm harm(WellRecord record, List<Finding> findings) {
    Harm soonest = Harm.OTHER;
    @Nullable FindingKind gravest = null;
    for (Finding finding : findings) {
      FindingKind kind = finding.rule().kind();
      Harm harm = Objects.requireNonNull(harms.get(finding.rule()));
      if (harm.isNow() && !isFarOff(record, finding)) {
        return harmNow(findings);
      }
      harm = harm.isNow() ? Harm.PRESSURE : harm;
      int order = gravest == null ? -1 : kind.compareTo(gravest);
      if (order < 0 || (order == 0 && harm.compareTo(soonest) < 0)) {
        gravest = kind;
        soonest = harm;
      }
    }
    return soonest;
  }

  /** Nobody is roused by a figure that no well has. */
  private static boolean isFarOff(WellRecord record, Finding finding) {
    return record.farOff().stream()
        .anyMatch(each -> finding.rule().required().contains(each.key()));
  }

  private Harm harmNow(List<Finding> findings) {
    return isOfWater(findings) ? Harm.WATER : Harm.HAZARD;
  }
}
