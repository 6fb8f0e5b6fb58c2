package org.wellcurb.cli;

import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.ScreenSummary;
import org.wellcurb.rulepack.FindingKind;
import picocli.CommandLine;

/**
 * What makes a run end with 1.
 *
 * @param kind findings of this kind; null for rows and files set aside
 */
record Gate(@Nullable FindingKind kind) {
  private static final String SET_ASIDE = "set-aside";

  boolean isTripped(ScreenSummary summary) {
    return kind == null
        ? summary.setAside() + summary.filesSetAside() > 0
        : summary.findings().of(kind) > 0;
  }

  /** Reads one. */
  static final class Converter implements CommandLine.ITypeConverter<Gate> {
    @Override
    public Gate convert(String text) {
      if (text.equals(SET_ASIDE)) {
        return new Gate(null);
      }
      for (FindingKind kind : FindingKind.values()) {
        if (kind.label().equals(text)) {
          return new Gate(kind);
        }
      }
      throw new CommandLine.TypeConversionException(
          "'" + text + "' is none of deficiency, discrepancy, omission, advisory, set-aside");
    }
  }
}
