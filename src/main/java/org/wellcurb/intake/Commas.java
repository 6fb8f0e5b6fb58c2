package org.wellcurb.intake;

import java.util.List;
import java.util.regex.Pattern;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.CellStyle;

/**
 * What a comma inside a number means in each column of a file.
 *
 * <p>Where commas part the cells they part thousands in numbers too. Elsewhere a cell alone may not
 * tell ({@code 1,250}); the column does if some of its first cells can mean only one thing and none
 * only the other.
 */
final class Commas {
  /** A unit, or a mark for one, behind the number: {@code 28,7 m}, {@code 6,5"}. */
  private static final String UNIT =
      "( ?[\\p{L}'\"\u00B0\u2032\u2033%][\\p{L}/%'.\u00B2\u00B3]{0,9})?";

  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?(\\d+,(\\d{1,2}|\\d{4,})|0,\\d+|\\d{1,3}(\\.\\d{3})+,\\d+)" + UNIT);
  private static final Pattern THOUSANDS =
      Pattern.compile("[-+]?[1-9]\\d{0,2}((,\\d{3})+\\.\\d+|(,\\d{3}){2,})" + UNIT);

  private static final Pattern POINT = Pattern.compile("[-+]?\\d+\\.\\d+" + UNIT);
  private static final Pattern THREE = Pattern.compile("[-+]?[1-9]\\d{0,2}\\.\\d{3}" + UNIT);

  private final boolean part;
  private final boolean sheet;
  private final List<List<String>> rows;

  /**
   * @param part true if commas part the cells
   * @param sheet true for a sheet of a workbook, where numbers are stored as such
   * @param rows the first rows of the file
   */
  Commas(boolean part, boolean sheet, List<List<String>> rows) {
    this.part = part;
    this.sheet = sheet;
    this.rows = rows;
  }

  /** The style of a column, its commas settled if they can be. */
  CellStyle settle(CellStyle style, int column) {
    Comma comma = style.comma();
    if (comma == Comma.EITHER) {
      comma = part ? Comma.THOUSANDS : ofColumn(column);
      comma = comma == Comma.EITHER && !thousandPoint(column).isEmpty() ? Comma.NEITHER : comma;
    }
    return style.withComma(sheet && comma == Comma.DECIMAL ? Comma.STORED : comma);
  }

  /**
   * A number of a column whose point may part thousands ({@code 1.250}), as all its points may, and
   * as commas are decimal in other columns; empty if there is none. In a workbook a point is mostly
   * that of a number as it is stored.
   */
  String thousandPoint(int column) {
    String found = "";
    for (List<String> row : part || sheet ? List.<List<String>>of() : rows) {
      String cell = column < row.size() ? HeaderKey.strip(row.get(column)) : "";
      if (THREE.matcher(cell).matches()) {
        found = found.isEmpty() ? cell : found;
      } else if (POINT.matcher(cell).matches()) {
        return "";
      }
    }
    int width = rows.isEmpty() ? 0 : rows.get(0).size();
    for (int c = 0; c < width && !found.isEmpty(); c++) {
      if (ofColumn(c) == Comma.DECIMAL) {
        return found;
      }
    }
    return "";
  }

  private Comma ofColumn(int column) {
    boolean decimal = false;
    boolean thousands = false;
    for (List<String> row : rows) {
      String cell = column < row.size() ? HeaderKey.strip(row.get(column)) : "";
      if (cell.indexOf(',') >= 0) {
        decimal |= DECIMAL.matcher(cell).matches();
        thousands |= THOUSANDS.matcher(cell).matches();
      }
    }
    return decimal == thousands ? Comma.EITHER : decimal ? Comma.DECIMAL : Comma.THOUSANDS;
  }
}
