package org.wellcurb.cli;

import picocli.CommandLine;

/**
 * A yes or a no that is said. Not a boolean: of those the library takes the next word for another.
 */
enum YesNoOption {
  YES,
  NO;

  /** Reads the word on the command line. */
  static final class Converter implements CommandLine.ITypeConverter<YesNoOption> {
    @Override
    public YesNoOption convert(String text) {
      return switch (text) {
        case "yes" -> YES;
        case "no" -> NO;
        default ->
            throw new CommandLine.TypeConversionException("'" + text + "' is neither yes nor no");
      };
    }
  }
}
