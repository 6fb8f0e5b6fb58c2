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
  private Whose() {}

  /** The licence as written; empty where the record names neither. */
  public static String licence(WellRecord record, Finding finding) {
    Entry entry = record.catalogue().find(finding.deciding().entry());
    String driller = written(record, "driller.licence");
    String installer = written(record, "installer.licence");
    boolean pump = entry != null && entry.part() == Part.PUMP;
    String first = pump ? installer : driller;
    return first.isEmpty() ? (pump ? driller : installer) : first;
  }

  /** A licence that the record gives, as written; empty where it gives none. */
  public static String written(WellRecord record, String key) {
    Catalogue catalogue = record.catalogue();
    int index = catalogue.index(key);
    return record.isGiven(index) ? record.written(index) : "";
  }
}
