package org.wellcurb.report.drawing;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Writes a drawing as SVG. Shapes carry classes of the page's style sheet, since the page's policy
 * allows no styles of their own; text is escaped; there are no scripts. What can be followed are
 * the letters of findings; all else is hidden from readers of the screen, who have the same in
 * words beside it.
 */
final class Svg {
  private final StringBuilder out = new StringBuilder();
  private final StringBuilder links = new StringBuilder();
  private final Set<String> kinds = new HashSet<>();
  private final String id;
  private final int width;
  private boolean isOpen;
  private final String title;

  Svg(String id, int width, String title) {
    this.id = id;
    this.width = width;
    this.title = title;
  }

  /** True if a shape of this kind, or this pattern, was drawn. */
  boolean has(String kind) {
    return kinds.contains(kind);
  }

  /** A sign of this drawing's legend, which may use its patterns. */
  Svg small() {
    return new Svg(id, Legend.WIDTH, title);
  }

  /** A pattern of lines or dots, {@code id-name}, to be used as {@code fill}. */
  Svg pattern(String name, int size, String shapes) {
    out.append("<pattern id=\"").append(id).append('-').append(name);
    out.append("\" width=\"").append(size).append("\" height=\"").append(size);
    out.append("\" patternUnits=\"userSpaceOnUse\">").append(shapes).append("</pattern>");
    return this;
  }

  /**
   * What is drawn up to {@link #shut()} leads to an address when it is pointed at. It is another
   * way to what the page says in words, so that keys pass it by. Nothing where there is none.
   */
  Svg open(String address, String title) {
    isOpen = !address.isEmpty();
    if (isOpen) {
      out.append("<a href=\"").append(escape(address)).append("\" tabindex=\"-1\"><title>");
      out.append(escape(title)).append("</title>");
    }
    return this;
  }

  Svg shut() {
    out.append(isOpen ? "</a>" : "");
    isOpen = false;
    return this;
  }

  Svg line(String kind, double x1, double y1, double x2, double y2) {
    return shape("line", kind, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
  }

  /** A rectangle between two heights, in either order. */
  Svg box(String kind, double x, double y1, double y2, double w) {
    double top = Math.min(y1, y2);
    return shape("rect", kind, "x", x, "y", top, "width", w, "height", Math.abs(y2 - y1));
  }

  /** A rectangle filled with a pattern of this drawing. */
  Svg filled(String pattern, double x, double y1, double y2, double w) {
    kinds.add(pattern);
    double top = Math.min(y1, y2);
    out.append("<rect fill=\"url(#").append(id).append('-').append(pattern).append(")\"");
    numbers("x", x, "y", top, "width", w, "height", Math.abs(y2 - y1));
    out.append("/>");
    return this;
  }

  Svg circle(String kind, double x, double y, double r) {
    return shape("circle", kind, "cx", x, "cy", y, "r", r);
  }

  /** A path whose data is made of numbers and letters only. */
  Svg path(String kind, String data) {
    kinds.add(kind);
    out.append("<path class=\"").append(kind).append("\" d=\"").append(data).append("\"/>");
    return this;
  }

  Svg text(String kind, double x, double y, String text) {
    if (text.isEmpty()) {
      return this;
    }
    out.append("<text class=\"").append(kind).append('"');
    numbers("x", x, "y", y);
    out.append('>').append(escape(text)).append("</text>");
    return this;
  }

  /** How wide letters of findings are with the gap before each. */
  static double width(List<Mark> marks) {
    double width = 0;
    for (Mark mark : marks) {
      width += 4 + markWidth(mark);
    }
    return width;
  }

  private static double markWidth(Mark mark) {
    return 9 + 9.0 * mark.letter().length();
  }

  /**
   * Letters of findings in boxes, from {@code x} to the right; gives where the next would stand.
   */
  double marks(double x, double y, List<Mark> marks) {
    double at = x;
    for (Mark mark : marks) {
      double w = markWidth(mark);
      links.append("<a href=\"#").append(escape(mark.anchor())).append("\" aria-label=\"");
      links.append(escape(mark.letter() + ": " + mark.sentence())).append("\">");
      String was = out.toString();
      out.setLength(0);
      shape("rect", "mark", "x", at, "y", y - 14, "width", w, "height", 18);
      text("mark-letter", at + w / 2, y, mark.letter());
      links.append(out).append("</a>");
      out.setLength(0);
      out.append(was);
      at += w + 4;
    }
    return at;
  }

  /** The whole drawing of this height. */
  String close(double height) {
    return close(height, "");
  }

  /**
   * The same.
   *
   * @param says what it shows and what of it falls short, in a sentence or two; may be empty
   */
  String close(double height, String says) {
    boolean isSaid = !says.isEmpty();
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"group\" class=\"drawing\" viewBox=\"0 0 "
        + width
        + " "
        + number(height)
        + "\" aria-labelledby=\""
        + id
        + (isSaid ? "-t\" aria-describedby=\"" + id + "-d" : "-t")
        + "\"><title id=\""
        + id
        + "-t\">"
        + escape(title)
        + "</title>"
        + (isSaid ? "<desc id=\"" + id + "-d\">" + escape(says) + "</desc>" : "")
        + "<g aria-hidden=\"true\">"
        + out
        + "</g>"
        + links
        + "</svg>";
  }

  /** A sign of a legend, which stands beside its words. */
  String closeSmall() {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing sign\" viewBox=\"0 0 "
        + width
        + " "
        + Legend.HEIGHT
        + "\" aria-hidden=\"true\" focusable=\"false\">"
        + out
        + "</svg>";
  }

  private Svg shape(String element, String kind, Object... attributes) {
    kinds.add(kind);
    out.append('<').append(element).append(" class=\"").append(kind).append('"');
    numbers(attributes);
    out.append("/>");
    return this;
  }

  private void numbers(Object... attributes) {
    for (int i = 0; i < attributes.length; i += 2) {
      double value = ((Number) attributes[i + 1]).doubleValue();
      out.append(' ').append(attributes[i]).append("=\"").append(number(value)).append('"');
    }
  }

  /** One decimal, and nothing that is not a number. */
  static String number(double x) {
    if (Double.isNaN(x) || Double.isInfinite(x)) {
      throw new IllegalArgumentException("not a place in a drawing: " + x);
    }
    String text = String.format(Locale.ROOT, "%.1f", x);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** Text for an element or an attribute; what XML cannot hold becomes the replacement mark. */
  static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.appendCodePoint(c < 0x20 ? 0xFFFD : c);
              }
            });
    return escaped.toString();
  }
}
