package org.wellcurb.intake;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import org.dhatim.fastexcel.reader.Row;

/**
 * A sheet of a workbook, written out as a table with commas while it is read: line by line as the
 * sheet has rows, so that a line number is a row number. All lines have as many cells as the widest
 * of the first rows; what is written to the right of that makes a row too long.
 */
final class SheetStream extends InputStream {
  private static final int LOOKED_AT = 200;

  private final Iterator<Row> rows;
  private final boolean from1904;
  private final Closeable workbook;
  private final Deque<Line> first = new ArrayDeque<>();
  private final int width;
  private long line = 1;
  private byte[] bytes = new byte[0];
  private int at;

  private record Line(int number, List<String> cells) {}

  SheetStream(Iterator<Row> rows, boolean from1904, Closeable workbook) throws IOException {
    this.rows = rows;
    this.from1904 = from1904;
    this.workbook = workbook;
    int widest = 0;
    while (first.size() < LOOKED_AT && hasNext()) {
      Line row = take();
      widest = Math.max(widest, row.cells.size());
      first.add(row);
    }
    width = widest;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    while (at == bytes.length) {
      if (first.isEmpty() && !hasNext()) {
        return -1;
      }
      bytes = write(first.isEmpty() ? take() : first.remove());
      at = 0;
    }
    int n = Math.min(length, bytes.length - at);
    System.arraycopy(bytes, at, into, from, n);
    at += n;
    return n;
  }

  private boolean hasNext() throws IOException {
    try {
      return rows.hasNext();
    } catch (RuntimeException e) {
      throw new CutShort("the sheet cannot be read on (" + e.getMessage() + ")");
    }
  }

  private Line take() throws IOException {
    try {
      Row row = rows.next();
      List<String> cells = new ArrayList<>();
      int filled = 0;
      for (int i = 0; i < row.getCellCount(); i++) {
        String text = SheetCell.text(row.getCell(i), from1904);
        cells.add(text);
        filled = text.isEmpty() ? filled : i + 1;
      }
      return new Line(row.getRowNum(), cells.subList(0, filled));
    } catch (RuntimeException e) {
      throw new CutShort("the sheet cannot be read on (" + e.getMessage() + ")");
    }
  }

  private byte[] write(Line row) {
    StringBuilder out = new StringBuilder();
    for (; line < row.number; line++) {
      out.append('\n');
    }
    if (!row.cells.isEmpty()) {
      for (int i = 0; i < Math.max(width, row.cells.size()); i++) {
        out.append(i == 0 ? "" : ",");
        out.append(i < row.cells.size() ? quoted(row.cells.get(i)) : "");
      }
    }
    line++;
    return out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String quoted(String cell) {
    return cell.indexOf(',') < 0 && cell.indexOf('"') < 0
        ? cell
        : '"' + cell.replace("\"", "\"\"") + '"';
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }
}
