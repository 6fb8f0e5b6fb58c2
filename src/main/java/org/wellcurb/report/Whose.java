package org.wellcurb.report;

import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Part;
import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.Finding;

/**
 * To which licence a finding falls: those on an entry of the pump part to the installer, all others
 * to the driller; to the other of the two where that one is not given.
 */
public final class Whose {
  public static final int DRILLER = Catalogue.standard().index("driller.licence");
  public static final int INSTALLER = Catalogue.standard().index("installer.licence");

  private Whose() {}

  /** The licence as written; empty where the record names neither. */
  public static String licence(WellRecord record, Finding finding) {
    return licence(record, finding, driller(record), installer(record));
  }

  /** The same, where the licences are known. */
  public static String licence(
      WellRecord record, Finding finding, String driller, String installer) {
    boolean pump = isInstallers(record, finding);
    String first = pump ? installer : driller;
    return first.isEmpty() ? (pump ? driller : installer) : first;
  }

  /** True if a finding is the installer's, where both licences are given. */
  static boolean isInstallers(WellRecord record, Finding finding) {
    Entry entry = record.catalogue().find(finding.deciding().entry());
    return entry != null && entry.part() == Part.PUMP;
  }

  /** The driller's licence as written; empty where the record gives none. */
  public static String driller(WellRecord record) {
    return written(record, DRILLER);
  }

  /** The installer's licence as written; empty where the record gives none. */
  public static String installer(WellRecord record) {
    return written(record, INSTALLER);
  }

  /** What a record gives in an entry, as written; empty where it gives nothing. */
  public static String written(WellRecord record, String key) {
    return written(record, record.catalogue().index(key));
  }

  /** The same, by place of the entry. */
  public static String written(WellRecord record, int entry) {
    return record.isGiven(entry) ? record.written(entry) : "";
  }
}
