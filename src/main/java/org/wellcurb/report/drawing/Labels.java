package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels in a column beside a drawing, each led to its height, from the top down and none over
 * another. Letters of findings stand before their label, and what does not fit goes on below it, so
 * that no letter and no word is lost or read as its neighbour's.
 */
final class Labels {
  /** Between the last row of a label and the first of the next. */
  private static final int GAP = 19;

  private static final int ROW = 16;
  private static final int ROW_OF_LETTERS = 20;
  private static final int INDENT = 8;
  private static final int LEAD = 12;

  private record Row(List<Mark> marks, String text) {
    Row {
      marks = List.copyOf(marks);
    }
  }

  private record Label(double wanted, List<Row> rows) {
    Label {
      rows = List.copyOf(rows);
    }

    /** From its first row to the first of the next label. */
    double height() {
      double height = GAP;
      for (int i = 1; i < rows.size(); i++) {
        height += step(rows, i);
      }
      return height;
    }
  }

  private final List<Label> labels = new ArrayList<>();
  private final double from;
  private final double left;
  private final double room;

  /**
   * @param from where the leads begin
   * @param left where the labels begin
   * @param room how wide a label with its letters may be
   */
  Labels(double from, double left, double room) {
    this.from = from;
    this.left = left;
    this.room = room;
  }

  /** From the row before to this one; letters are higher than words, on either. */
  private static double step(List<Row> rows, int i) {
    boolean isOfWords = rows.get(i).marks().isEmpty() && rows.get(i - 1).marks().isEmpty();
    return isOfWords ? ROW : ROW_OF_LETTERS;
  }

  /** A label of something at this height, which is not above that of the one before it. */
  void add(double y, String text, List<Mark> marks) {
    List<Row> rows = new ArrayList<>();
    int next = 0;
    while (next < marks.size() && Svg.width(marks.subList(next, marks.size())) > room) {
      int end = next + 1;
      while (end < marks.size() && Svg.width(marks.subList(next, end + 1)) <= room) {
        end++;
      }
      rows.add(new Row(marks.subList(next, end), ""));
      next = end;
    }
    List<Mark> last = marks.subList(next, marks.size());
    double used = last.isEmpty() ? 0 : Svg.width(last);
    List<String> texts = Lettering.wrap(text, room - used, room - INDENT);
    rows.add(new Row(last, texts.get(0)));
    texts.subList(1, texts.size()).forEach(line -> rows.add(new Row(List.of(), line)));
    labels.add(new Label(y, rows));
  }

  /** Draws them, none above {@code top}; gives the height of the last row, or {@code top}. */
  double draw(Svg svg, double top) {
    double[] at =
        Spread.apart(
            labels.stream().mapToDouble(Label::wanted).toArray(),
            labels.stream().mapToDouble(Label::height).toArray(),
            top);
    double last = top;
    for (int i = 0; i < at.length; i++) {
      Label label = labels.get(i);
      String lead = "M" + Svg.number(from) + " " + Svg.number(label.wanted()) + "h" + LEAD + "L";
      svg.path("lead", lead + Svg.number(left - 4) + " " + Svg.number(at[i]));
      double y = at[i];
      for (int k = 0; k < label.rows().size(); k++) {
        Row row = label.rows().get(k);
        y += k == 0 ? 0 : step(label.rows(), k);
        double x = svg.marks(left, y + 5, row.marks());
        boolean isBelow = k > 0 && row.marks().isEmpty();
        svg.text("label", isBelow ? left + INDENT : x, y + 5, row.text());
      }
      last = y;
    }
    return last;
  }
}
