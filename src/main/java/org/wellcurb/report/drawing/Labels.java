package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels in a column beside a drawing, each led to its height, from the top down and none over
 * another. Letters of findings that find no room behind their label stand in a row of their own.
 */
final class Labels {
  private static final int GAP = 19;
  private static final int LEAD = 12;

  private record Row(double wanted, String text, List<Mark> marks, boolean hasLead) {
    Row {
      marks = List.copyOf(marks);
    }
  }

  private final List<Row> rows = new ArrayList<>();
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

  /** A label of something at this height, which is not above that of the one before it. */
  void add(double y, String text, List<Mark> marks) {
    // The end of a label is its figure, which must not be lost: what does not fit goes on below.
    int blank = Lettering.width(text) > room ? figure(text) : -1;
    if (blank > 0) {
      wrapped(y, text.substring(0, blank));
      last(y, text.substring(blank + 1), marks, false);
      return;
    }
    last(y, text, marks, true);
  }

  /** The row with the figure, and the letters behind it or in rows below. */
  private void last(double y, String text, List<Mark> marks, boolean hasLead) {
    if (marks.isEmpty() || Lettering.width(text) + Svg.width(marks) <= room) {
      rows.add(new Row(y, text, marks, hasLead));
      return;
    }
    rows.add(new Row(y, text, List.of(), hasLead));
    for (int i = 0; i < marks.size(); ) {
      int end = i + 1;
      while (end < marks.size() && Svg.width(marks.subList(i, end + 1)) <= room) {
        end++;
      }
      rows.add(new Row(y, "", marks.subList(i, end), false));
      i = end;
    }
  }

  /** The blank before the last figure of a text; -1 where it has none. */
  private static int figure(String text) {
    for (int i = text.length() - 2; i > 0; i--) {
      if (text.charAt(i) == ' ' && isFigure(text.charAt(i + 1))) {
        return i;
      }
    }
    return text.lastIndexOf(' ', text.length() - 6);
  }

  private static boolean isFigure(char c) {
    return Character.isDigit(c) || c == '-';
  }

  /** Rows of whole words; a word that does not fit is cut when it is drawn. */
  private void wrapped(double y, String text) {
    String rest = text;
    boolean isFirst = true;
    while (!rest.isEmpty()) {
      int end = rest.length();
      while (Lettering.width(rest.substring(0, end)) > room && rest.lastIndexOf(' ', end - 1) > 0) {
        end = rest.lastIndexOf(' ', end - 1);
      }
      rows.add(new Row(y, rest.substring(0, end), List.of(), isFirst));
      rest = rest.substring(end).strip();
      isFirst = false;
    }
  }

  /** Draws them, none above {@code top}; gives the height of the last, or {@code top}. */
  double draw(Svg svg, double top) {
    List<Double> wanted = rows.stream().map(Row::wanted).toList();
    double[] at = Spread.apart(wanted, GAP, top);
    for (int i = 0; i < at.length; i++) {
      Row row = rows.get(i);
      if (row.hasLead()) {
        String lead = "M" + Svg.number(from) + " " + Svg.number(row.wanted()) + "h" + LEAD + "L";
        svg.path("lead", lead + Svg.number(left - 4) + " " + Svg.number(at[i]));
      }
      String text = Lettering.cut(row.text(), room);
      svg.text("label", left, at[i] + 5, text);
      double x = text.isEmpty() ? left : left + 4 + Lettering.width(text);
      svg.marks(x, at[i] + 5, row.marks());
    }
    return at.length == 0 ? top : at[at.length - 1];
  }
}
