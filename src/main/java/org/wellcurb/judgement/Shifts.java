package org.wellcurb.judgement;

import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Frame;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/**
 * The ways in which the depths of a record may have to be brought to ground level. A depth from the
 * casing top is reduced by the stick-up, one from the pitless increased by the pitless depth. Where
 * a datum is blank both ground and casing top are possible; where the stick-up is blank or a range,
 * each of its ends (for a blank, of its plausible range) and a value between, which for a blank
 * comes first, for sheets show the first way. In one way all depths of one datum move alike, so
 * that differences between them never suffer.
 */
final class Shifts {
  private static final int MOST = 64;
  private static final double[] AT_GROUND = {0};
  private static final String OTHER = "other";

  private final int recordDatum;
  private final int waterDatum;
  private final int pumpDatum;
  private final int stickup;
  private final int pitlessDepth;
  private final Interval plausibleStickup;
  private final Interval plausiblePitless;

  private final double[] ofRecord = new double[MOST];
  private final double[] ofWater = new double[MOST];
  private final double[] ofPump = new double[MOST];
  private int count;

  Shifts(Catalogue catalogue) {
    recordDatum = catalogue.index("record.datum");
    waterDatum = catalogue.index("water.datum");
    pumpDatum = catalogue.index("pump.datum");
    stickup = catalogue.index("well.stickup");
    pitlessDepth = catalogue.index("pitless.depth");
    plausibleStickup = catalogue.entry(stickup).plausible();
    plausiblePitless = catalogue.entry(pitlessDepth).plausible();
  }

  /** Works out the ways for the record in the frame. */
  void take(Frame f) {
    WellRecord r = f.record();
    @Nullable String record = r.choice(recordDatum);
    @Nullable String water = own(r, waterDatum);
    @Nullable String pump = own(r, pumpDatum);
    count = 0;
    boolean isAllGround =
        "ground".equals(record)
            && (water == null || water.equals("ground"))
            && (pump == null || pump.equals("ground"));
    if (isAllGround) {
      add(0, 0, 0);
      return;
    }
    double[] pitlessEnds =
        "pitless".equals(pump) ? ends(r, pitlessDepth, plausiblePitless) : AT_GROUND;
    for (double top : ends(r, stickup, plausibleStickup)) {
      for (double ofRecord : options(record, top)) {
        for (double ofWater : water == null ? new double[] {ofRecord} : options(water, top)) {
          for (double pitless : pitlessEnds) {
            add(ofRecord, ofWater, pump(pump, ofRecord, top, pitless));
            if (OTHER.equals(pump)) {
              add(ofRecord, ofWater, 0);
            }
          }
        }
      }
    }
  }

  private static double pump(@Nullable String pump, double ofRecord, double top, double pitless) {
    if (pump == null) {
      return ofRecord;
    }
    return switch (pump) {
      case "ground" -> 0;
      case "pitless" -> -pitless;
      default -> top;
    };
  }

  /**
   * The datum that a group of depths has for itself; null where it goes by the record's. Words that
   * could not be read say that it has one, and not which.
   */
  private static @Nullable String own(WellRecord r, int entry) {
    return r.state(entry) == WellRecord.UNREADABLE ? OTHER : r.choice(entry);
  }

  /** What a datum may be: a blank, or "other", is the ground or the casing top. */
  private static double[] options(@Nullable String datum, double top) {
    if ("ground".equals(datum)) {
      return AT_GROUND;
    }
    return "casing top".equals(datum) ? new double[] {top} : new double[] {0, top};
  }

  private static double[] ends(WellRecord r, int entry, Interval plausible) {
    if (!r.isGiven(entry)) {
      return new double[] {usual(plausible), plausible.lo(), plausible.hi()};
    }
    double lo = r.lo(entry);
    double hi = r.hi(entry);
    if (lo == hi) {
      return new double[] {lo};
    }
    // Only an open end is taken from the plausible range: what is written is written.
    double least = Double.isInfinite(lo) ? Math.min(plausible.lo(), hi) : lo;
    double most = Double.isInfinite(hi) ? Math.max(plausible.hi(), lo) : hi;
    return new double[] {least, most, (least + most) / 2};
  }

  /**
   * A value between the ends of a plausible range: the ground, where that is one. A rule that asks
   * for a band may fail at both ends and be met between.
   */
  private static double usual(Interval plausible) {
    return plausible.contains(0) ? 0 : (plausible.lo() + plausible.hi()) / 2;
  }

  private void add(double record, double water, double pump) {
    for (int i = 0; i < count; i++) {
      if (ofRecord[i] == record && ofWater[i] == water && ofPump[i] == pump) {
        return;
      }
    }
    ofRecord[count] = record;
    ofWater[count] = water;
    ofPump[count] = pump;
    count++;
  }

  /** How many ways there are; at least one. */
  int count() {
    return count;
  }

  /** Brings the frame to one of the ways. */
  void apply(Frame f, int way) {
    f.shift(Datum.RECORD, ofRecord[way]);
    f.shift(Datum.WATER, ofWater[way]);
    f.shift(Datum.PUMP, ofPump[way]);
  }

  /** The entries that would leave one way only, for a formula that reads these datums. */
  void needs(
      WellRecord r,
      boolean readsRecord,
      boolean readsWater,
      boolean readsPump,
      Collection<Entry> into) {
    Catalogue catalogue = r.catalogue();
    @Nullable String record = r.choice(recordDatum);
    @Nullable String water = own(r, waterDatum);
    @Nullable String pump = own(r, pumpDatum);
    boolean goesByRecord =
        readsRecord || (readsWater && water == null) || (readsPump && pump == null);
    if (record == null && goesByRecord) {
      into.add(catalogue.entry(recordDatum));
    }
    if (readsWater && OTHER.equals(water)) {
      into.add(catalogue.entry(waterDatum));
    }
    if (readsPump && OTHER.equals(pump)) {
      into.add(catalogue.entry(pumpDatum));
    }
    boolean goesByTop =
        (goesByRecord && !"ground".equals(record))
            || (readsWater && water != null && !water.equals("ground"))
            || (readsPump && pump != null && !pump.equals("ground") && !pump.equals("pitless"));
    if (goesByTop && !r.isPoint(stickup)) {
      into.add(catalogue.entry(stickup));
    }
    if (readsPump && "pitless".equals(pump) && !r.isGiven(pitlessDepth)) {
      into.add(catalogue.entry(pitlessDepth));
    }
  }
}
