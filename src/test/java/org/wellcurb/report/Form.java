package org.wellcurb.report;

import java.util.List;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Extra;
import org.wellcurb.record.Kind;
import org.wellcurb.record.Layer;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.Variance;
import org.wellcurb.record.WellRecord;

/** A form filled by hand, for tests of pages. */
public final class Form {
  private final Catalogue catalogue = Catalogue.standard();
  private final RecordFiller filler = new RecordFiller(catalogue);
  private final java.util.ArrayList<Layer> layers = new java.util.ArrayList<>();

  public Form(String id) {
    filler.clear("forms.csv", 2);
    text("record.id", id);
  }

  public Form text(String key, String written) {
    Entry entry = entry(key);
    filler.written(entry.index(), written);
    if (entry.kind() == Kind.CHOICE) {
      filler.choice(entry.index(), entry.choice(written));
    } else if (entry.kind() == Kind.YES_NO) {
      filler.choice(entry.index(), written.equals("yes") ? 1 : 0);
    } else {
      filler.text(entry.index(), written.trim().toLowerCase(java.util.Locale.ROOT));
    }
    return this;
  }

  public Form amount(String key, double value, Unit unit) {
    return range(key, value, value, unit, Numbers.plain(value) + " " + unit.symbol());
  }

  public Form range(String key, double lo, double hi, Unit unit, String written) {
    int i = entry(key).index();
    filler.amount(i, unit.toSi(lo), unit.toSi(hi), 0, unit, Note.NONE);
    filler.written(i, written);
    return this;
  }

  public Form date(String key, String day) {
    int i = entry(key).index();
    double days = java.time.LocalDate.parse(day).toEpochDay();
    filler.date(i, days, days, Note.NONE);
    filler.written(i, day);
    return this;
  }

  public Form unreadable(String key, String written, Note note) {
    int i = entry(key).index();
    filler.absent(i, WellRecord.UNREADABLE, note);
    filler.written(i, written);
    return this;
  }

  public Form notApplicable(String key) {
    int i = entry(key).index();
    filler.absent(i, WellRecord.NOT_APPLICABLE, Note.NONE);
    filler.written(i, "n/a");
    return this;
  }

  public Form layer(double from, double to, Unit unit, String material) {
    layers.add(new Layer(Interval.point(unit.toSi(from)), Interval.point(unit.toSi(to)), material));
    filler.layers(layers);
    return this;
  }

  public Form variance(String rule, String reference) {
    filler.variances(List.of(new Variance(rule, reference)));
    return this;
  }

  public Form extra(String name, String text) {
    filler.extras(List.of(new Extra(name, text)));
    return this;
  }

  public WellRecord record() {
    return filler.record().copy();
  }

  private Entry entry(String key) {
    return catalogue.entry(catalogue.index(key));
  }

  private static final class Numbers {
    static String plain(double value) {
      return new java.math.BigDecimal(value)
          .round(new java.math.MathContext(8))
          .stripTrailingZeros()
          .toPlainString();
    }
  }
}
