package org.wellcurb.cli;

import picocli.CommandLine;

/** Reads yes or no. */
final class YesNoOption implements CommandLine.ITypeConverter<Boolean> {
  @Override
  public Boolean convert(String text) {
    return switch (text) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw new CommandLine.TypeConversionException("'" + text + "' is neither yes nor no");
    };
  }
}
