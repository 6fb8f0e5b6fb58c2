package org.wellcurb.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine;

/** Reads a date given on the command line. */
final class DateOption implements CommandLine.ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new CommandLine.TypeConversionException(
          "'" + text + "' is not a date; write it as 2026-01-31");
    }
  }
}
