package org.wellcurb.crosscheck;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * When two forms are nearly the same. What every form has of its own, and who copies one has to
 * change, is three things however many entries tell it: where the well is, when, and by whom. Where
 * two of these differ, nothing else may, but on forms on which much is measured: honest forms that
 * do and differ a little more are too many.
 *
 * <p>Dates that are all as many days later than the other form's are a sign of their own: the days
 * between permit, start, completion and filing are like those of few other wells.
 *
 * <p>Where little is measured, and written in fives, figures agree by chance: what agrees must be
 * rare in the batch, as {@link Commonness} has it, or all must be the same, place and day too.
 */
public final class Alike {
  /** Things that may differ between near copies. */
  public static final int MOST_DIFFERENT = 3;

  /** Measured entries that must agree: wells alike on a form differ in these. */
  public static final int LEAST_MEASURED = 3;

  /** The same where more differs than where, when and by whom. */
  public static final int LEAST_MEASURED_BESIDE = 5;

  /** Dates that must be given for their being as many days apart to tell anything. */
  public static final int LEAST_DATES = 3;

  /**
   * Measured entries that must agree for one thing to differ beside two of where, when and whom.
   */
  public static final int LEAST_MEASURED_OF_MUCH = 10;

  /** Measured entries that may differ. */
  public static final int MOST_MEASURED_DIFFERENT = 1;

  /** Entries that must agree in all. */
  public static final int LEAST_EQUAL = 6;

  private static final Set<String> WHERE =
      Set.of(
          "site.latitude",
          "site.longitude",
          "site.position_datum",
          "site.position_accuracy",
          "site.septic_latitude",
          "site.septic_longitude",
          "site.elevation",
          "site.zone");

  /** Records that agree with one by chance; where they are more, two that agree are no copies. */
  public static final double MOST_BY_CHANCE = 1e-4;

  /** What an entry tells apart from others: nothing that counts. */
  static final int NOTHING = 0;

  /** Whose work it is. */
  static final int BY_WHOM = 1;

  /** On what day. */
  private static final int ON_DAY = 2;

  /** How many such kinds there are: those two, and kinds of measured entries. */
  static final int SAYINGS = 9;

  /** Measured entries that hang on one another; all others of them tell one thing more. */
  private static final List<Set<String>> MEASURED =
      List.of(
          Set.of("water.static_level"),
          Set.of("water.pumping_level"),
          Set.of("water.yield", "water.test_rate", "water.free_flow"),
          Set.of(
              "well.casing_depth",
              "well.outer_casing_depth",
              "well.liner_top",
              "well.rock_depth",
              "grout.top",
              "grout.bottom"),
          Set.of("pump.rated_flow", "relief.capacity", "site.sewage_flow"));

  private static final Set<String> WHOM = Set.of("driller.licence", "installer.licence");

  /** What an entry tells. */
  private enum Tells {
    WHICH,
    WHERE,
    WHEN,
    WHOM,
    MEASURED,
    MORE
  }

  private final Tells[] tells;
  private final byte[] sayings;
  private final String[] keys;
  private final int latitude;
  private final int longitude;
  private final int completed;
  private final DaysBetween days;

  Alike(Catalogue catalogue) {
    int entries = catalogue.size();
    latitude = catalogue.index("site.latitude");
    longitude = catalogue.index("site.longitude");
    completed = catalogue.index("dates.completed");
    days = new DaysBetween(catalogue);
    tells = new Tells[entries + SurveyRow.BESIDE.size()];
    keys = new String[tells.length];
    sayings = new byte[tells.length];
    for (int i = 0; i < tells.length; i++) {
      tells[i] = i < entries ? tells(catalogue.entry(i)) : Tells.MORE;
      keys[i] = i < entries ? catalogue.entry(i).key() : SurveyRow.BESIDE.get(i - entries);
      sayings[i] = (byte) saying(tells[i], keys[i]);
    }
  }

  private static int saying(Tells tells, String key) {
    if (tells == Tells.WHOM) {
      return BY_WHOM;
    }
    if (tells != Tells.MEASURED) {
      return key.equals("dates.completed") ? ON_DAY : NOTHING;
    }
    int kind = 0;
    while (kind < MEASURED.size() && !MEASURED.get(kind).contains(key)) {
      kind++;
    }
    return ON_DAY + 1 + kind;
  }

  /** The kind of what an entry tells, less than {@link #SAYINGS}. */
  int saying(int entry) {
    return sayings[entry];
  }

  /** A mark of the position; 0 if there is none. */
  int where(int[] marks) {
    return marks[latitude] == 0 || marks[longitude] == 0
        ? 0
        : (marks[latitude] * 0x01000193 + marks[longitude]) | 1;
  }

  /**
   * A mark of the days between the dates; 0 where fewer than {@link #LEAST_DATES} are given. Forms
   * that differ in every date by as many days have the same.
   */
  int between(int[] marks) {
    return days.mark(marks);
  }

  /** Whether the days between the dates of two records are the same. */
  boolean isBetweenEqual(int[] a, int[] b) {
    int between = between(a);
    return between != 0 && between == between(b);
  }

  /** Whether both were completed on one day that is known. */
  boolean isOneDay(int[] a, int[] b) {
    return a[completed] != 0 && a[completed] == b[completed];
  }

  /** A mark of all that is measured. */
  int measured(int[] marks) {
    int mark = 1;
    for (int e = 0; e < marks.length; e++) {
      if (tells[e] == Tells.MEASURED && marks[e] != 0) {
        mark = (mark * 0x01000193 + marks[e]) * 0x01000193 + e;
      }
    }
    return mark;
  }

  private static Tells tells(Entry entry) {
    if (SurveyRow.isIdentity(entry)) {
      return Tells.WHICH;
    }
    if (WHERE.contains(entry.key())) {
      return Tells.WHERE;
    }
    if (WHOM.contains(entry.key())) {
      return Tells.WHOM;
    }
    if (entry.kind() == Kind.DATE) {
      return DaysBetween.isOfForm(entry) ? Tells.WHEN : Tells.WHOM;
    }
    return SurveyRow.isMeasured(entry) ? Tells.MEASURED : Tells.MORE;
  }

  /** Room for the marks of one record. */
  int[] marks() {
    return new int[tells.length];
  }

  /** Keys of entries, in the order of the form. */
  List<String> keys(BitSet entries) {
    return entries.stream().mapToObj(i -> keys[i]).toList();
  }

  /** Whether the records with these marks are nearly the same. */
  boolean isNear(int[] a, int[] b) {
    int equal = 0;
    int measured = 0;
    int measuredDifferent = 0;
    int more = 0;
    int where = 0;
    int when = 0;
    int whom = 0;
    for (int e = 0; e < tells.length; e++) {
      if ((a[e] | b[e]) == 0 || tells[e] == Tells.WHICH) {
        continue;
      }
      boolean isEqual = a[e] == b[e];
      equal += isEqual ? 1 : 0;
      switch (tells[e]) {
        case MEASURED -> {
          measured += isEqual ? 1 : 0;
          measuredDifferent += isEqual ? 0 : 1;
        }
        case WHERE -> where = isEqual ? where : 1;
        case WHEN -> when = isEqual ? when : 1;
        case WHOM -> whom = isEqual ? whom : 1;
        default -> more += isEqual ? 0 : 1;
      }
    }
    int beside = more + measuredDifferent;
    int own = where + when + whom;
    boolean isMuch = beside <= 1 && measured >= LEAST_MEASURED_OF_MUCH;
    // Equal dates, and dates that are all as many days apart, leave less to chance.
    boolean isSureOfDays =
        beside == measuredDifferent
            && where + whom == 0
            && measured < LEAST_MEASURED_BESIDE
            && isBetweenEqual(a, b);
    return (isMuch || (beside + own <= MOST_DIFFERENT && (own < 2 || beside == 0)))
        && measuredDifferent <= MOST_MEASURED_DIFFERENT
        && measured >= (beside == 0 || isSureOfDays ? LEAST_MEASURED : LEAST_MEASURED_BESIDE)
        && equal >= LEAST_EQUAL;
  }

  /** Whether the records with these marks say the same of one place and day. */
  boolean isSame(int[] a, int[] b) {
    int measured = 0;
    for (int e = 0; e < tells.length; e++) {
      if (a[e] != b[e] && tells[e] != Tells.WHICH) {
        return false;
      }
      measured += a[e] != 0 && tells[e] == Tells.MEASURED ? 1 : 0;
    }
    return a[latitude] != 0
        && a[longitude] != 0
        && a[completed] != 0
        && measured >= SurveyRow.FEW_OF_SAME;
  }

  /**
   * The same for wells of one street, which are alike for honest reasons: each entry counts, but
   * for dates, which are one thing here too. Where several dates differ, each in its own way,
   * nothing else does: of forms on which little is measured, honest ones differ in no more.
   */
  boolean isNearWithinStreet(int[] a, int[] b) {
    int different = 0;
    int when = 0;
    boolean isMeasuredEqual = true;
    for (int e = 0; e < tells.length; e++) {
      if (a[e] != b[e] && tells[e] != Tells.WHICH) {
        different += tells[e] == Tells.WHEN ? 0 : 1;
        when += tells[e] == Tells.WHEN ? 1 : 0;
        isMeasuredEqual &= tells[e] != Tells.MEASURED;
      }
    }
    int most = isMeasuredEqual ? MOST_DIFFERENT : MOST_DIFFERENT - 1;
    return different + when <= most
        || (when > 1 && different == 0)
        || (when > 1 && different < most && isBetweenEqual(a, b));
  }

  /** Adds the entries in which records differ, but for what tells which record it is. */
  void different(int[] a, int[] b, BitSet into) {
    for (int e = 0; e < tells.length; e++) {
      if (a[e] != b[e] && tells[e] != Tells.WHICH) {
        into.set(e);
      }
    }
  }

  /** Entries of a record, but for those in which it differs from others. */
  int equal(int[] marks, BitSet different) {
    int equal = 0;
    for (int e = 0; e < tells.length; e++) {
      equal += marks[e] != 0 && tells[e] != Tells.WHICH && !different.get(e) ? 1 : 0;
    }
    return equal;
  }
}
