package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Makes one text of the cells of several columns. */
final class Combining {
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])");

  private Combining() {}

  /** The text; empty if all cells are blank. */
  static String text(Step step, RowView row) {
    if (step.columns.length == 1) {
      return row.trimmed(step.columns[0]);
    }
    List<String> cells = new ArrayList<>();
    boolean blank = true;
    for (int column : step.columns) {
      String cell = row.trimmed(column);
      blank &= cell.isEmpty();
      cells.add(cell);
    }
    return blank ? "" : text(step.mapped.combine(), step.mapped.separator(), cells);
  }

  /**
   * True if a figure that is made of several cells rests on zeros that may stand for blanks: all of
   * feet and inches, or either end of a range. The mark that joining puts behind a bare 0 does not
   * make it one that somebody meant.
   */
  static boolean isZeroForBlank(Step step, RowView row) {
    boolean isRange = step.mapped.combine() == Combine.RANGE;
    if (!isRange && step.mapped.combine() != Combine.FEET_AND_INCHES) {
      return false;
    }
    boolean any = false;
    boolean all = true;
    for (int column : step.columns) {
      String cell = row.trimmed(column);
      boolean zero = isBareZero(cell);
      any |= zero;
      all &= zero || cell.isEmpty();
    }
    return any && (all || isRange);
  }

  /**
   * True if a minus sign stands before minutes or inches: it belongs to the whole, or is a slip.
   */
  static boolean hasSignWithin(Step step, RowView row) {
    Combine combine = step.mapped.combine();
    boolean parts = combine == Combine.FEET_AND_INCHES || combine == Combine.DEGREES;
    for (int i = 1; parts && i < step.columns.length; i++) {
      String cell = row.trimmed(step.columns[i]);
      if (!cell.isEmpty() && "-\u2212\u2013".indexOf(cell.charAt(0)) >= 0 && cell.length() > 1) {
        return true;
      }
    }
    return false;
  }

  /** The text with points for decimal commas where a comma can be nothing else: in degrees. */
  static String pointed(Step step, String text) {
    return step.mapped.combine() == Combine.DEGREES
        ? DECIMAL_COMMA.matcher(text).replaceAll(".")
        : text;
  }

  private static boolean isBareZero(String cell) {
    boolean digit = false;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c != '0' && c != '.' && c != ',') {
        return false;
      }
      digit |= c == '0';
    }
    return digit;
  }

  static String text(Combine combine, String separator, List<String> cells) {
    return switch (combine) {
      case ONE, FIRST -> cells.stream().filter(c -> !c.isEmpty()).findFirst().orElse("");
      case FEET_AND_INCHES -> marked(cells, List.of(" ft", " in"));
      case DEGREES -> marked(cells, List.of("°", "'", "\"", ""));
      case DATE -> date(cells);
      case RANGE -> joined(" to ", cells);
      case NUMBER_AND_UNIT -> joined(" ", cells);
      case TEXT -> joined(separator, cells);
    };
  }

  private static String joined(String separator, List<String> cells) {
    return String.join(separator, cells.stream().filter(c -> !c.isEmpty()).toList());
  }

  /** Each cell with its unit behind it; what is no number stays as it is. */
  private static String marked(List<String> cells, List<String> marks) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (!cell.isEmpty()) {
        char last = cell.charAt(cell.length() - 1);
        boolean number = (last >= '0' && last <= '9') || last == '.';
        out.append(out.isEmpty() ? "" : " ").append(cell).append(number ? marks.get(i) : "");
      }
    }
    return out.toString();
  }

  private static String date(List<String> cells) {
    String year = cells.get(0);
    String month = cells.get(1);
    String day = cells.size() > 2 ? cells.get(2) : "";
    if (year.isEmpty() || (month.isEmpty() && !day.isEmpty())) {
      return joined("-", cells);
    }
    if (!month.isEmpty() && !Character.isDigit(month.charAt(0))) {
      return (day + " " + month + " " + year).strip();
    }
    StringBuilder out = new StringBuilder(year);
    for (String part : List.of(month, day)) {
      if (!part.isEmpty()) {
        out.append('-').append(part.length() == 1 ? "0" : "").append(part);
      }
    }
    return out.toString();
  }
}
