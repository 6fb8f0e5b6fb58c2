package org.wellcurb.report;

import java.util.Locale;
import java.util.regex.Pattern;
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
  private static final Pattern YEAR = Pattern.compile("[0-9]{4} edition");

  static SourceLine of(Source source, Words words) {
    StringBuilder out = new StringBuilder(source.title());
    if (!source.section().isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(section(source, words));
    }
    if (!source.edition().isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(edition(source, words));
    }
    if (source.read() != null) {
      out.append(out.isEmpty() ? "" : ", ").append(words.say("source.read.on", source.read()));
    }
    String basis = words.say("basis." + source.basis().name().toLowerCase(Locale.ROOT));
    String text = out.isEmpty() ? basis : out + " (" + basis + ")";
    return new SourceLine(text, isWeb(source.address()) ? source.address() : "", note(source));
  }

  private static String edition(Source source, Words words) {
    String said = YEAR.matcher(source.edition()).matches() ? words.said(source.edition()) : "";
    return said.isEmpty() ? source.edition() : said;
  }

  /** A section that begins with its number is called one; others say themselves what they are. */
  private static String section(Source source, Words words) {
    String section = source.section();
    return source.isNumbered() ? words.say("source.section", section) : section;
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
