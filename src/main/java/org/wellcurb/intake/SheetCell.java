package org.wellcurb.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.NoResult;

/**
 * The text of a cell of a workbook: what a person would have typed. Dates are ISO, numbers plain,
 * of formulas the stored result, or that there is none; a line break becomes a blank, so that a row
 * stays on its line.
 */
final class SheetCell {
  private static final LocalDate DAY_0_OF_1904 = LocalDate.of(1904, 1, 1);
  private static final LocalDate DAY_0_OF_1900 = LocalDate.of(1899, 12, 31);

  /** Spreadsheets count a 29 February 1900 that never was as day 60. */
  private static final int NO_DAY = 60;

  private static final int MOST_DAYS = 2_958_465;

  /** The point may be a decimal one or part thousands. */
  private static final Pattern POINT_OR_THOUSANDS = Pattern.compile("-?[1-9][0-9]{0,2}\\.[0-9]{3}");

  private SheetCell() {}

  static String text(@Nullable Cell cell, boolean from1904) {
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return "";
    }
    String raw = cell.getRawValue();
    if (raw == null) {
      // A formula whose result is an empty text stores that; one without any was never worked out.
      return cell.getType() == CellType.FORMULA
          ? NoResult.of(cell.getFormula() == null ? "" : oneLine(cell.getFormula()))
          : "";
    }
    return switch (cell.getType()) {
      case BOOLEAN -> raw.equals("1") || raw.equalsIgnoreCase("true") ? "TRUE" : "FALSE";
      case NUMBER, FORMULA -> number(raw, cell, from1904);
      case STRING -> marked(oneLine(String.valueOf(cell.getValue())));
      default -> oneLine(raw);
    };
  }

  private static String number(String raw, Cell cell, boolean from1904) {
    double value;
    try {
      value = Double.parseDouble(raw);
    } catch (NumberFormatException e) {
      return oneLine(raw);
    }
    Integer format = cell.getDataFormatId();
    String pattern = cell.getDataFormatString();
    if (isDate(format == null ? 0 : format, pattern == null ? "" : pattern)
        && value >= (from1904 ? 0 : 1)
        && value < MOST_DAYS) {
      return date((int) value, from1904);
    }
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return raw;
    }
    // 212.3 is stored as 212.30000000000001: the shortest digits that mean the same number.
    BigDecimal plain = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
  }

  private static String date(int day, boolean from1904) {
    if (from1904) {
      return DAY_0_OF_1904.plusDays(day).toString();
    }
    if (day == NO_DAY) {
      return "1900-02-29";
    }
    return DAY_0_OF_1900.plusDays(day > NO_DAY ? day - 1 : day).toString();
  }

  /** True if numbers in this format are shown as days (ECMA-376 part 1, 18.8.30, from memory). */
  static boolean isDate(int id, String pattern) {
    if (id > 0 && id < 50 && pattern.isEmpty()) {
      return (id >= 14 && id <= 17) || id == 22 || (id >= 27 && id <= 31) || id == 36;
    }
    String bare = pattern.replaceAll("\"[^\"]*\"|\\[[^]]*]|\\\\.|_.|\\*.", "");
    String folded = bare.toLowerCase(Locale.ROOT);
    if (folded.startsWith("general")) {
      return false;
    }
    boolean time = folded.indexOf('h') >= 0 || folded.indexOf('s') >= 0;
    return folded.indexOf('y') >= 0
        || folded.indexOf('d') >= 0
        || (folded.indexOf('m') >= 0 && !time);
  }

  /** A text that looks as a number would: marked as spreadsheets mark a text. */
  private static String marked(String text) {
    return POINT_OR_THOUSANDS.matcher(text).matches() ? "'" + text : text;
  }

  private static String oneLine(String text) {
    return text.replaceAll("[\\r\\n]+", " ").strip();
  }
}
