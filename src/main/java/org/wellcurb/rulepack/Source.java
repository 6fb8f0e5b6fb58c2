package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Where a rule is written.
 *
 * @param id what the pack calls it
 * @param basis what kind of source it is
 * @param title title of the text; empty for common practice
 * @param section section of the text; may be empty
 * @param edition edition of the text; may be empty
 * @param read the day on which it was read; null where that is not said
 * @param address where it can be read; may be empty
 * @param note anything else to be said, such as {@code from memory}; may be empty
 */
public record Source(
    String id,
    Basis basis,
    String title,
    String section,
    String edition,
    @Nullable LocalDate read,
    String address,
    String note) {

  /** By its id: to make ready a hash of all parts takes longer than one run saves by it. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** What a rule rests on. */
  public enum Basis {
    PUBLISHED,
    COMMON_PRACTICE,
    INVENTED;

    /** How packs and outputs write it. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** Whether its section begins with a number, and so needs the word before it. */
  public boolean isNumbered() {
    return !section.isEmpty() && Character.isDigit(section.charAt(0));
  }

  /** The source in one line, such as {@code Fenwick well by-law, section 4 (invented)}. */
  public String line() {
    StringBuilder out = new StringBuilder(title);
    if (!section.isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(isNumbered() ? "section " : "").append(section);
    }
    if (!edition.isEmpty()) {
      out.append(out.isEmpty() ? "" : ", ").append(edition);
    }
    if (read != null) {
      out.append(out.isEmpty() ? "" : ", ").append("read ").append(read);
    }
    return out.isEmpty() ? basis.label() : out + " (" + basis.label() + ")";
  }
}
