package org.wellcurb.screening;

import java.util.Set;
import org.wellcurb.record.WellRecord;

/**
 * What the sample of a record says of the water that people drink, whatever rules its pack has. The
 * limits are the federal ones for public systems (40 CFR 141.62).
 */
public final class UnfitWater {
  /** Keys of the entries that say whether bacteria are there. */
  public static final Set<String> BACTERIA =
      Set.of("sample.coliform", "sample.coliform_again", "sample.e_coli");

  public static final String NITRATE = "sample.nitrate";
  public static final String ARSENIC = "sample.arsenic";

  /** 10 mg/L as nitrogen, in kg/m3. */
  private static final double MOST_NITRATE = 0.010;

  /** 0.010 mg/L, in kg/m3. */
  private static final double MOST_ARSENIC = 1e-5;

  private final WellRecord record;

  public UnfitWater(WellRecord record) {
    this.record = record;
  }

  /** A later sample that is clear counts for the first, but not for faecal bacteria. */
  public boolean hasBacteria() {
    boolean isCleared = is("sample.coliform_again", "absent");
    return is("sample.e_coli", "present")
        || is("sample.coliform_again", "present")
        || (is("sample.coliform", "present") && !isCleared);
  }

  /** Over the limit, or from it upwards: of more than 10 mg/L nobody waits for another figure. */
  public boolean hasNitrate() {
    return mayHaveNitrate() && lo(NITRATE) >= MOST_NITRATE;
  }

  /** Over the limit, or in a range that reaches over it. */
  public boolean mayHaveNitrate() {
    return mayBeOver(NITRATE, MOST_NITRATE);
  }

  /** As {@link #hasNitrate}. */
  public boolean hasArsenic() {
    return mayHaveArsenic() && lo(ARSENIC) >= MOST_ARSENIC;
  }

  /** As {@link #mayHaveNitrate}. */
  public boolean mayHaveArsenic() {
    return mayBeOver(ARSENIC, MOST_ARSENIC);
  }

  private boolean mayBeOver(String key, double limit) {
    int entry = record.catalogue().index(key);
    return record.isGiven(entry) && record.hi(entry) > limit;
  }

  private double lo(String key) {
    return record.lo(record.catalogue().index(key));
  }

  private boolean is(String key, String choice) {
    return choice.equals(record.choice(record.catalogue().index(key)));
  }
}
