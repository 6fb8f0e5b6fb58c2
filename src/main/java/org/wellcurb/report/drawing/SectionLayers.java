package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Layer;

/** The driller's log as a strip of numbered fields; the same material has the same hatching. */
final class SectionLayers {
  static final int LEFT = 51;
  private static final int STRIP = 30;
  private static final int MOST = 40;

  /** Hatchings of our own: what they stand for is said in the legend, by number. */
  private static final List<String> HATCHES =
      List.of(
          "<path class=\"fine\" d=\"M0 9L9 0\"/>",
          "<path class=\"fine\" d=\"M0 3H9M4 3V9\"/>",
          "<circle class=\"dot\" cx=\"3\" cy=\"3\" r=\"1.6\"/>",
          "<path class=\"fine\" d=\"M0 2L4.5 6L9 2\"/>",
          "<path class=\"fine\" d=\"M2 0V9M6 0V9\"/>",
          "<path class=\"fine\" d=\"M1 1L5 5M5 1L1 5\"/>",
          "<path class=\"fine\" d=\"M0 0L9 9M0 5H9\"/>");

  private final Sketch sketch;
  private final Depths depths;

  SectionLayers(Sketch sketch, Depths depths) {
    this.sketch = sketch;
    this.depths = depths;
  }

  static void patterns(Svg svg) {
    for (int i = 0; i < HATCHES.size(); i++) {
      svg.pattern("layer" + i, 9, HATCHES.get(i));
    }
    svg.pattern("bedrock", 12, "<path class=\"fine\" d=\"M2 9L6 3L10 9Z\"/>");
  }

  /**
   * @param deepest depth to which the well is drawn (m)
   */
  void draw(Svg svg, Ruler ruler, double deepest) {
    List<Layer> layers = layers();
    double rock = depths.most("well.rock_depth");
    if (sketch.record().layers().isEmpty() && rock < deepest) {
      double from = ruler.y(Math.max(0, rock));
      svg.filled("bedrock", LEFT, from, ruler.y(deepest), STRIP);
      svg.box("outline", LEFT, from, ruler.y(deepest), STRIP);
    }
    double written = Double.NEGATIVE_INFINITY;
    List<String> materials = materials(layers);
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      double top = ruler.y(depth(layer.from().lo()));
      double bottom = ruler.y(depth(layer.to().hi()));
      svg.box("paper", LEFT, top, bottom, STRIP);
      svg.filled(hatch(materials, layer), LEFT, top, bottom, STRIP);
      svg.box("outline", LEFT, top, bottom, STRIP);
    }
    for (int i = 0; i < layers.size(); i++) {
      double top = ruler.y(depth(layers.get(i).from().lo()));
      double bottom = ruler.y(depth(layers.get(i).to().hi()));
      double y = (top + bottom) / 2;
      if (bottom - top >= 1 && y - written >= 22) {
        written = y;
        svg.circle("seal", LEFT + STRIP / 2.0, y, 9);
        svg.text("seal-number", LEFT + STRIP / 2.0, y + 5, String.valueOf(i + 1));
      }
    }
  }

  /**
   * @param deepest depth to which the well is drawn (m)
   */
  void legend(Legend legend, double deepest) {
    List<Layer> layers = layers();
    List<String> materials = materials(layers);
    for (int i = 0; i < layers.size(); i++) {
      legend.pattern(hatch(materials, layers.get(i)), line(layers, i));
    }
    legend.pattern("bedrock", sketch.say("section.sign.bedrock"));
    if (layers.stream().anyMatch(layer -> depth(layer.to().hi()) > deepest * 1.0001)) {
      legend.line(sketch.say("section.layers.below"));
    }
    int sound = sound().size();
    if (sound > layers.size()) {
      legend.line(cut(layers.size(), sound));
    }
    if (sketch.record().layers().size() > sound) {
      legend.line(sketch.say("section.layers.left"));
    }
  }

  /** The same in words. */
  List<String> words() {
    List<Layer> layers = layers();
    List<String> words = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      words.add(sketch.say("section.layer.words", line(layers, i)));
    }
    int sound = sound().size();
    if (sound > layers.size()) {
      words.add(cut(layers.size(), sound));
    }
    return words;
  }

  private String line(List<Layer> layers, int i) {
    Layer layer = layers.get(i);
    return sketch.say(
        "section.layer",
        i + 1,
        sketch.print(depth(layer.from().lo()), "well.depth"),
        sketch.print(depth(layer.to().hi()), "well.depth"),
        layer.material());
  }

  /** How deep they go (m); 0 where none can be drawn. */
  double deepest() {
    return layers().stream().mapToDouble(layer -> depth(layer.to().hi())).max().orElse(0);
  }

  private static List<String> materials(List<Layer> layers) {
    return layers.stream().map(SectionLayers::material).distinct().toList();
  }

  private static String material(Layer layer) {
    return layer.material().trim().toLowerCase(Locale.ROOT);
  }

  private static String hatch(List<String> materials, Layer layer) {
    return "layer" + materials.indexOf(material(layer)) % HATCHES.size();
  }

  private String cut(int drawn, int sound) {
    return sketch.say("section.layers.cut", drawn, sound);
  }

  /** Those that are drawn: the first of a long log. */
  private List<Layer> layers() {
    return sound().stream().limit(MOST).toList();
  }

  /**
   * Those that can be drawn: with both ends, the upper above the lower, no deeper than any well.
   */
  private List<Layer> sound() {
    return sketch.record().layers().stream()
        .filter(
            layer ->
                layer.from().lo() >= -300
                    && layer.to().hi() <= 4000
                    && layer.from().lo() < layer.to().hi())
        .toList();
  }

  /** Below the ground; a log that begins at the casing top begins at the ground. */
  private double depth(double metres) {
    return Math.max(0, metres + depths.shift(Datum.RECORD));
  }
}
