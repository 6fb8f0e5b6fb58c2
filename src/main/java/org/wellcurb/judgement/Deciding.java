package org.wellcurb.judgement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * The comparison that decided an outcome, as findings show it.
 *
 * @param entry key of the entry that it is about; empty where it reads none
 * @param written what the record has there, as written
 * @param value the value compared (reduced to ground, computed), in {@code unit}; for a range its
 *     worse end; NaN where it is not a number or not known
 * @param unit the unit that the entry was written in, or the working's in the record's system; null
 *     for words and dates
 * @param limit the limit, in {@code unit}; NaN where it is not a number or not known
 * @param margin value less limit in the favourable direction, in {@code unit} (days for dates); NaN
 *     where there is none
 * @param valueText the value as text, for words and dates and ranges; empty for exact numbers
 * @param limitText the limit as text, for words, and for a number or a date that is a range; empty
 *     for other numbers and dates
 * @param isDate true where value and limit are days since 1970-01-01
 * @param subject what was compared, in words, where that is not the entry itself but something
 *     worked out from it; empty otherwise
 * @param limitName what the limit is, in words, where it is another entry, or a day reckoned from
 *     one; empty otherwise
 * @param isStrict true where the limit itself would not do either: more than it, or less, is wanted
 * @param leastMargin the margin of the better ends, where value or limit is a range; the margin
 *     itself where neither is, or where they have no such end
 * @param beside what the entry was held against, each other entry or sum in words with what the
 *     record has of it; none where it is held against a figure
 */
public record Deciding(
    String entry,
    String written,
    double value,
    @Nullable Unit unit,
    double limit,
    double margin,
    String valueText,
    String limitText,
    boolean isDate,
    String subject,
    String limitName,
    boolean isStrict,
    double leastMargin,
    List<String> beside) {
  public Deciding {
    beside = List.copyOf(beside);
  }

  /** A comparison that is held against a figure alone. */
  public Deciding(
      String entry,
      String written,
      double value,
      @Nullable Unit unit,
      double limit,
      double margin,
      String valueText,
      String limitText,
      boolean isDate,
      String subject,
      String limitName,
      boolean isStrict,
      double leastMargin) {
    this(
        entry,
        written,
        value,
        unit,
        limit,
        margin,
        valueText,
        limitText,
        isDate,
        subject,
        limitName,
        isStrict,
        leastMargin,
        List.of());
  }

  /** A comparison with a limit that may be reached and is a figure of its own. */
  public Deciding(
      String entry,
      String written,
      double value,
      @Nullable Unit unit,
      double limit,
      double margin,
      String valueText,
      String limitText,
      boolean isDate,
      String subject) {
    this(
        entry,
        written,
        value,
        unit,
        limit,
        margin,
        valueText,
        limitText,
        isDate,
        subject,
        /* limitName= */ "",
        /* isStrict= */ false,
        margin);
  }

  /** The same, held against something. */
  Deciding against(List<String> others) {
    return new Deciding(
        entry,
        written,
        value,
        unit,
        limit,
        margin,
        valueText,
        limitText,
        isDate,
        subject,
        limitName,
        isStrict,
        leastMargin,
        others);
  }

  /** A comparison of the entry itself. */
  public Deciding(
      String entry,
      String written,
      double value,
      @Nullable Unit unit,
      double limit,
      double margin,
      String valueText,
      String limitText,
      boolean isDate) {
    this(entry, written, value, unit, limit, margin, valueText, limitText, isDate, "");
  }
}
