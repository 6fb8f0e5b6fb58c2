package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The legend of a drawing: its signs as they are drawn, of what is drawn and nothing else. */
final class Legend {
  static final int WIDTH = 30;
  static final int HEIGHT = 18;

  /** The middle of a sign, from its top. */
  static final double MIDDLE = HEIGHT / 2.0;

  private final Svg drawing;
  private final List<Sign> lines = new ArrayList<>();

  Legend(Svg drawing) {
    this.drawing = drawing;
  }

  /** A line about a sign, where something of this kind was drawn. */
  Legend sign(String kind, String text, Consumer<Svg> sign) {
    if (drawing.has(kind)) {
      Svg small = drawing.small();
      sign.accept(small);
      lines.add(new Sign(small.closeSmall(), text));
    }
    return this;
  }

  /** A line about a pattern, where it was drawn. */
  Legend pattern(String name, String text) {
    return sign(
        name,
        text,
        small -> {
          small.filled(name, 1, 2, HEIGHT - 2, WIDTH - 2);
          small.box("outline", 1, 2, HEIGHT - 2, WIDTH - 2);
        });
  }

  /** A line about a kind of line across, where it was drawn. */
  Legend across(String kind, String text) {
    return sign(kind, text, small -> small.line(kind, 1, MIDDLE, WIDTH - 1, MIDDLE));
  }

  /** A line about a kind of box, where it was drawn. */
  Legend box(String kind, String text) {
    return sign(kind, text, small -> small.box(kind, 1, 3, HEIGHT - 3, WIDTH - 2));
  }

  /** A line that speaks of no sign; none where it is empty. */
  Legend line(String text) {
    if (!text.isEmpty()) {
      lines.add(Sign.of(text));
    }
    return this;
  }

  Legend lines(List<String> texts) {
    texts.forEach(this::line);
    return this;
  }

  /** A line that is already made. */
  Legend add(Sign sign) {
    lines.add(sign);
    return this;
  }

  List<Sign> all() {
    return lines;
  }
}
