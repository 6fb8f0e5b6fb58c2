package org.wellcurb.cli;

import picocli.CommandLine;

/**
 * Which notices are written. Not a yes-no: of those the library takes the next word for another.
 */
enum NoticesOption {
  ALL,
  NONE;

  /** Reads the word on the command line. */
  static final class Converter implements CommandLine.ITypeConverter<NoticesOption> {
    @Override
    public NoticesOption convert(String text) {
      return switch (text) {
        case "all" -> ALL;
        case "none" -> NONE;
        default ->
            throw new CommandLine.TypeConversionException("'" + text + "' is none of all, none");
      };
    }
  }
}
