package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
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

  private static final int COLIFORM = place("sample.coliform");
  private static final int COLIFORM_AGAIN = place("sample.coliform_again");
  private static final int E_COLI = place("sample.e_coli");
  private static final int NITRATE_AT = place(NITRATE);
  private static final int ARSENIC_AT = place(ARSENIC);
  private static final int CHLORINE_AT = place("sample.chlorine_residual");

  /** 4 mg/L of free chlorine, in kg/m3: the most that public water may hold, 40 CFR 141.65. */
  private static final double MOST_CHLORINE = 0.004;

  /**
   * What makes ill over years, and of copper sooner, in kg/m3: fluoride by 40 CFR 141.62; lead and
   * copper by the action levels of 40 CFR 141.80; uranium by 40 CFR 141.66; manganese by the
   * federal health advisory of 2004 (0.3 mg/L, from memory).
   */
  private static final Map<String, Double> MOST =
      new TreeMap<>(
          Map.of(
              "sample.fluoride", 0.004,
              "sample.lead", 1.5e-5,
              "sample.copper", 0.0013,
              "sample.manganese", 0.0003,
              "sample.uranium", 3e-5));

  private final WellRecord record;

  /**
   * A figure beyond such a limit.
   *
   * @param entry index of its entry
   * @param limit the limit, in SI
   * @param isSure false for a range that only reaches over it
   */
  public record Over(int entry, double limit, boolean isSure) {}

  public UnfitWater(WellRecord record) {
    this.record = record;
  }

  /** A later sample that is clear counts for the first, but not for faecal bacteria. */
  public boolean hasBacteria() {
    boolean isCleared = is(COLIFORM_AGAIN, "absent");
    return is(E_COLI, "present")
        || is(COLIFORM_AGAIN, "present")
        || (is(COLIFORM, "present") && !isCleared);
  }

  /** Whether bacteria were found that a later sample did not show. */
  boolean isCleared() {
    return !hasBacteria() && is(COLIFORM, "present");
  }

  /** Over the limit, or from it upwards: of more than 10 mg/L nobody waits for another figure. */
  public boolean hasNitrate() {
    return mayHaveNitrate() && record.lo(NITRATE_AT) >= MOST_NITRATE;
  }

  /** Over the limit, or in a range that reaches over it. */
  public boolean mayHaveNitrate() {
    return mayBeOver(NITRATE_AT, MOST_NITRATE);
  }

  /** As {@link #hasNitrate}. */
  public boolean hasArsenic() {
    return mayHaveArsenic() && record.lo(ARSENIC_AT) >= MOST_ARSENIC;
  }

  /** As {@link #mayHaveNitrate}. */
  public boolean mayHaveArsenic() {
    return mayBeOver(ARSENIC_AT, MOST_ARSENIC);
  }

  /** Whether those who drink it may be ill within days, so that it cannot wait. */
  public boolean isUrgent() {
    return hasBacteria() || hasNitrate();
  }

  /** Whether an entry is one of those that tell it. */
  public static boolean isToldBy(String entry) {
    return BACTERIA.contains(entry) || entry.equals(NITRATE);
  }

  /** Chlorine over what public water may hold, or in a range that reaches over it. */
  boolean mayHaveChlorine() {
    return mayBeOver(CHLORINE_AT, MOST_CHLORINE);
  }

  /** What else is over, or perhaps over, a federal limit, by key. */
  public static List<Over> over(WellRecord record) {
    List<Over> over = new ArrayList<>();
    MOST.forEach(
        (key, most) -> {
          int entry = record.catalogue().index(key);
          // 0.015 mg/L is 15 ug/L, though not to the last bit.
          double limit = most * (1 + 1e-9);
          if (record.isGiven(entry) && record.hi(entry) > limit) {
            over.add(new Over(entry, most, record.lo(entry) >= most));
          }
        });
    return over;
  }

  /** Whether an entry is a figure of what makes ill: not of taste, or of what stains. */
  public static boolean isOfHealth(Entry entry) {
    String key = entry.key();
    return key.equals(NITRATE) || key.equals(ARSENIC) || MOST.containsKey(key);
  }

  private boolean mayBeOver(int entry, double limit) {
    return record.isGiven(entry) && record.hi(entry) > limit;
  }

  private boolean is(int entry, String choice) {
    return choice.equals(record.choice(entry));
  }

  private static int place(String key) {
    return Catalogue.standard().index(key);
  }
}
