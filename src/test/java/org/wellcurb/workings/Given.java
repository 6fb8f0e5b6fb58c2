package org.wellcurb.workings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** What a record gives, for a working alone: exact values and ranges, without reading a form. */
final class Given {
  private final Map<String, double[]> amounts = new LinkedHashMap<>();
  private final Map<String, Double> halfPlaces = new LinkedHashMap<>();
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Double> figures = new LinkedHashMap<>();

  static Given nothing() {
    return new Given();
  }

  /** An exact amount in a unit. */
  Given with(String key, double value, Unit unit) {
    return range(key, value, value, unit);
  }

  Given range(String key, double lo, double hi, Unit unit) {
    double a = unit.toSi(lo);
    double b = unit.toSi(hi);
    return si(key, Math.min(a, b), Math.max(a, b));
  }

  Given si(String key, double lo, double hi) {
    Objects.requireNonNull(Catalogue.standard().find(key), key);
    amounts.put(key, new double[] {lo, hi});
    return this;
  }

  /** A choice, a yes or no, or a text. */
  Given with(String key, String word) {
    Entry entry = Objects.requireNonNull(Catalogue.standard().find(key), key);
    if (entry.kind() == Kind.CHOICE) {
      double place = Choices.place(key, word);
      return si(key, place, place);
    }
    if (entry.kind() == Kind.YES_NO) {
      double truth = word.equals("yes") ? 1 : 0;
      return si(key, truth, truth);
    }
    texts.put(key, word);
    return this;
  }

  Given halfPlace(String key, double si) {
    halfPlaces.put(key, si);
    return this;
  }

  Given figure(String name, double value, Unit unit) {
    figures.put(name, unit.toSi(value));
    return this;
  }

  /** The value of a working in SI, all inputs exact; NaN if it is unknown. */
  double at(String name) {
    double[] out = over(name);
    if (Double.isNaN(out[0]) || out[0] == out[1]) {
      return out[0];
    }
    throw new AssertionError(name + " is a range: " + out[0] + " to " + out[1]);
  }

  /** The value of a working in a unit. */
  double at(String name, Unit unit) {
    return unit.fromSi(at(name));
  }

  /** Least and greatest value in SI; NaN in both if it is unknown. */
  double[] over(String name) {
    Working working =
        Objects.requireNonNull(WorkingCatalogue.standard().find(name), "no working " + name);
    int n = working.inputs().size();
    double[] lo = new double[n + working.figures().size()];
    double[] hi = new double[lo.length];
    for (int i = 0; i < n; i++) {
      Input input = working.inputs().get(i);
      lo[i] = end(input, 0);
      hi[i] = end(input, 1);
      if (input.isRequired() && Double.isNaN(lo[i])) {
        return new double[] {Double.NaN, Double.NaN};
      }
    }
    for (int i = n; i < lo.length; i++) {
      String figure = working.figures().get(i - n);
      lo[i] =
          figures.getOrDefault(
              figure, Objects.requireNonNull(WorkingCatalogue.standard().figure(figure)).value());
      hi[i] = lo[i];
    }
    return Corners.over(working, lo, hi);
  }

  private double end(Input input, int end) {
    return switch (input.take()) {
      case VALUE, LOG_TOP, LOG_BOTTOM, LOG_GAP, LOG_OVERTURN ->
          amounts.containsKey(input.key()) ? amounts.get(input.key())[end] : Double.NaN;
      case SIZE -> {
        double[] size = amounts.get(input.key());
        double[] says = amounts.get("well.casing_size_is");
        boolean isTrue = says != null && says[0] != Choices.place("well.casing_size_is", "nominal");
        yield size != null && (size[0] == size[1] || isTrue) ? size[end] : Double.NaN;
      }
      case HALF_PLACE -> halfPlaces.getOrDefault(input.key(), 0.0);
      case TEXT_CODE -> {
        TextCode code = Objects.requireNonNull(input.code());
        double said = texts.containsKey(input.key()) ? code.of(texts.get(input.key())) : Double.NaN;
        double unsaid = end == 0 ? code.leastUnsaid() : code.greatestUnsaid();
        yield Double.isNaN(said) ? unsaid : said;
      }
    };
  }

  /** The unit in which the published row states its result. */
  static Unit unit(String symbol) {
    return Units.named(symbol).orElseThrow(() -> new AssertionError("no unit " + symbol));
  }
}
