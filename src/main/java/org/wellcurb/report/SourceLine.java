package org.wellcurb.report;

import java.util.Locale;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Source;

/**
 * A source as pages print it.
 *
 * @param text title, section, edition, day read and basis in one line
 * @param address where it can be read, if that is a web address; else empty
 * @param note anything else to be said; may be empty
 */
public record SourceLine(String text, String address, String note) {

  static SourceLine of(Source source, Words words) {
    StringBuilder out = new StringBuilder(source.title());
    if (!source.section().isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(words.say("source.section", source.section()));
    }
    if (!source.edition().isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(source.edition());
    }
    if (source.read() != null) {
      out.append(out.isEmpty() ? "" : ", ").append(words.say("source.read.on", source.read()));
    }
    String basis = words.say("basis." + source.basis().name().toLowerCase(Locale.ROOT));
    String text = out.isEmpty() ? basis : out + " (" + basis + ")";
    return new SourceLine(text, isWeb(source.address()) ? source.address() : "", note(source));
  }

  /** An address that is not of the web is shown, never made a link. */
  private static String note(Source source) {
    String address = isWeb(source.address()) ? "" : source.address();
    return source.note().isEmpty() || address.isEmpty()
        ? source.note() + address
        : source.note() + "; " + address;
  }

  private static boolean isWeb(String address) {
    return address.startsWith("https://") || address.startsWith("http://");
  }
}
