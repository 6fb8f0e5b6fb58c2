package org.wellcurb.intake;

import org.wellcurb.record.WellRecord;

/** Takes what a chunk holds, in the order of its rows. */
public interface RecordSink {
  /**
   * A record. The object is filled again for the next row: whoever keeps it takes a copy.
   *
   * @param record what the row says
   * @param raw the row itself, for whoever must set it aside after all
   */
  void record(WellRecord record, RawRow raw);

  /** A row that is no record. */
  void setAside(SetAside row);
}
