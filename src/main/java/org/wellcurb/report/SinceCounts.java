package org.wellcurb.report;

/**
 * Findings of two runs side by side.
 *
 * @param added findings that the earlier report did not have, of records that it had
 * @param still findings that both have
 * @param cleared findings that only the earlier report has, of records in this batch of which the
 *     rule is met now, or does not apply
 * @param judgedShort findings of records that read the same as before: only pack, edition, as-of
 *     date or program changed
 * @param judgedClear the same, for findings that only the earlier report has
 * @param gone findings of the earlier report whose record is not in this batch
 * @param untold findings that only the earlier report has, of which the rule can no longer be told
 * @param ofNewRecords findings of records that the earlier report did not have
 * @param saidVoid findings that only the earlier report has, of which an answer says that what they
 *     ask for does not apply
 */
public record SinceCounts(
    long added,
    long still,
    long cleared,
    long judgedShort,
    long judgedClear,
    long gone,
    long untold,
    long ofNewRecords,
    long saidVoid) {

  /** No findings. */
  public static final SinceCounts NONE = new SinceCounts(0, 0, 0, 0, 0, 0, 0, 0, 0);

  /** With one more finding of this change. */
  public SinceCounts and(Change change) {
    return new SinceCounts(
        added + (change == Change.NEW ? 1 : 0),
        still + (change == Change.STILL ? 1 : 0),
        cleared + (change == Change.CLEARED ? 1 : 0),
        judgedShort + (change == Change.JUDGED_SHORT ? 1 : 0),
        judgedClear + (change == Change.JUDGED_CLEAR ? 1 : 0),
        gone + (change == Change.GONE ? 1 : 0),
        untold + (change == Change.UNTOLD ? 1 : 0),
        ofNewRecords + (change == Change.NEW_RECORD ? 1 : 0),
        saidVoid + (change == Change.SAID_VOID ? 1 : 0));
  }

  /** What became of a finding between two runs. */
  public enum Change {
    NEW("new"),
    STILL("still there"),
    CLEARED("cleared"),
    JUDGED_SHORT("newly short, judged otherwise"),
    JUDGED_CLEAR("no longer short, judged otherwise"),
    GONE("record not in this batch"),
    UNTOLD("cannot be told any more"),
    NEW_RECORD("record not in the earlier batch"),
    SAID_VOID("said not to apply");

    private final String label;

    Change(String label) {
      this.label = label;
    }

    /** How {@code since.csv} writes it. */
    public String label() {
      return label;
    }
  }
}
