package org.wellcurb.cli;

import java.util.Locale;
import org.wellcurb.batch.SheetsFor;
import picocli.CommandLine;

/** Reads which records get a sheet. */
final class SheetsOption implements CommandLine.ITypeConverter<SheetsFor> {
  @Override
  public SheetsFor convert(String text) {
    for (SheetsFor which : SheetsFor.values()) {
      if (which.name().toLowerCase(Locale.ROOT).equals(text)) {
        return which;
      }
    }
    throw new CommandLine.TypeConversionException("'" + text + "' is none of flagged, all, none");
  }
}
