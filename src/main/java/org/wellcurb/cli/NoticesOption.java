package org.wellcurb.cli;

import picocli.CommandLine;

/** Reads whether notices are written. */
final class NoticesOption implements CommandLine.ITypeConverter<Boolean> {
  @Override
  public Boolean convert(String text) {
    return switch (text) {
      case "all" -> true;
      case "none" -> false;
      default ->
          throw new CommandLine.TypeConversionException("'" + text + "' is none of all, none");
    };
  }
}
