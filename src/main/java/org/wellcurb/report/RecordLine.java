package org.wellcurb.report;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Harm;

/**
 * One record in the list of the batch page.
 *
 * @param recordId the record's number, as written
 * @param file input it came from
 * @param row row in that input
 * @param pack id of the pack that judged it
 * @param driller licence of the driller, as written; empty if not given
 * @param installer licence of the pump installer, as written; empty if not given
 * @param kinds its findings by kind
 * @param harm what its findings may do that cannot wait; else what those of its gravest kind may do
 *     soonest
 * @param cannotTell rules that cannot be told of it
 * @param first its gravest finding as a sentence, with its source; empty if it has none
 * @param sheet address of its sheet from the batch page, such as {@code sheets/w-12.html}; empty if
 *     it has none
 * @param where where a map shows it; null if none does
 */
public record RecordLine(
    String recordId,
    String file,
    long row,
    String pack,
    String driller,
    String installer,
    KindCounts kinds,
    Harm harm,
    long cannotTell,
    String first,
    String sheet,
    @Nullable Place where) {
  private static final int HARMS = Harm.values().length;

  /** A record that no map shows, and whose findings may harm nobody soon. */
  public RecordLine(
      String recordId,
      String file,
      long row,
      String pack,
      String driller,
      String installer,
      KindCounts kinds,
      long cannotTell,
      String first,
      String sheet) {
    this(
        recordId,
        file,
        row,
        pack,
        driller,
        installer,
        kinds,
        Harm.OTHER,
        cannotTell,
        first,
        sheet,
        /* where= */ null);
  }

  /**
   * The order of the list: first what cannot wait; then by the gravest kind of finding, by the harm
   * that those may do, then most deficiencies, discrepancies, omissions, advisories; among equals
   * by file (code point) and row, so that the order does not hang on the workers.
   */
  public static final Comparator<RecordLine> WORST_FIRST =
      Comparator.<RecordLine>comparingInt(line -> rank(line.kinds, line.harm))
          .thenComparingLong(line -> -line.kinds.deficiency())
          .thenComparingLong(line -> -line.kinds.discrepancy())
          .thenComparingLong(line -> -line.kinds.omission())
          .thenComparingLong(line -> -line.kinds.advisory())
          .thenComparing(RecordLine::file)
          .thenComparingLong(RecordLine::row);

  /** True if a record with these findings would come before this line. */
  public boolean isAfter(KindCounts others, Harm otherHarm, String otherFile, long otherRow) {
    int ranks = Integer.compare(rank(others, otherHarm), rank(kinds, harm));
    if (ranks != 0) {
      return ranks < 0;
    }
    for (FindingKind kind : FindingKind.values()) {
      if (others.of(kind) != kinds.of(kind)) {
        return others.of(kind) > kinds.of(kind);
      }
    }
    int files = otherFile.compareTo(file);
    return files != 0 ? files < 0 : otherRow < row;
  }

  private static int rank(KindCounts kinds, Harm harm) {
    if (harm.isNow()) {
      return harm.ordinal() - HARMS;
    }
    for (FindingKind kind : FindingKind.values()) {
      if (kinds.of(kind) > 0) {
        return kind.ordinal() * HARMS + harm.ordinal();
      }
    }
    return Integer.MAX_VALUE;
  }

  /** By number and row: to make ready a hash of all parts takes longer than a run saves by it. */
  @Override
  public int hashCode() {
    return 31 * recordId.hashCode() + Long.hashCode(row);
  }

  /** The same line with the address of a sheet. */
  public RecordLine withSheet(String address) {
    return new RecordLine(
        recordId,
        file,
        row,
        pack,
        driller,
        installer,
        kinds,
        harm,
        cannotTell,
        first,
        address,
        where);
  }
}
