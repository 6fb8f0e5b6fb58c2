package org.wellcurb.screening;

import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/**
 * Whether a form names another place than the pack that judges it is for. A pack given alone judges
 * every record; whoever reads what comes of it must know that the form names another code.
 */
public final class NamedElsewhere {
  private static final int ENTRY = Catalogue.standard().index("record.jurisdiction");

  private NamedElsewhere() {}

  /**
   * The jurisdiction that the record names, as written, where the pack is for others; empty where
   * it names none, where the pack is for it, and where the pack is for no place of its own.
   */
  public static String of(WellRecord record, Pack pack) {
    @Nullable String named = record.text(ENTRY);
    if (named == null || named.isBlank() || pack.jurisdictions().isEmpty()) {
      return "";
    }
    String code = named.strip();
    boolean isFor = pack.jurisdictions().stream().anyMatch(code::equalsIgnoreCase);
    return isFor ? "" : record.written(ENTRY).strip();
  }
}
