package org.wellcurb.record;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.NumericDate;
import org.wellcurb.quantity.PlainNumber;

/**
 * What an office writes for no value, beyond the usual words: {@code -999}, {@code 1900-01-01},
 * {@code see file}. Numbers are compared as numbers, days as days, words without case.
 */
public final class Sentinels {
  /** None. */
  public static final Sentinels NONE = new Sentinels(Set.of(), Set.of());

  private final Set<String> unknown;
  private final Set<String> notApplicable;
  private final WordTable words;
  private final double[] numbers;
  private final long[] days;
  private final boolean any;

  private Sentinels(Set<String> unknown, Set<String> notApplicable) {
    this.unknown = Set.copyOf(unknown);
    this.notApplicable = Set.copyOf(notApplicable);
    List<String> all = new ArrayList<>();
    List<Integer> meanings = new ArrayList<>();
    List<Double> found = new ArrayList<>();
    List<Long> dates = new ArrayList<>();
    PlainNumber number = new PlainNumber();
    for (String word : unknown) {
      String trimmed = word.strip();
      all.add(trimmed);
      meanings.add(CellWords.UNKNOWN);
      if (number.read(trimmed, 0, trimmed.length())) {
        found.add(number.value());
      }
      byte[] bytes = trimmed.getBytes(StandardCharsets.UTF_8);
      long day = NumericDate.day(bytes, 0, bytes.length, DateOrder.ISO_ONLY, 0);
      if (NumericDate.isDay(day)) {
        dates.add(day);
      }
    }
    for (String word : notApplicable) {
      all.add(word.strip());
      meanings.add(CellWords.NOT_APPLICABLE);
    }
    words = WordTable.of(all, meanings);
    numbers = found.stream().mapToDouble(Double::doubleValue).toArray();
    days = dates.stream().mapToLong(Long::longValue).toArray();
    any = !all.isEmpty();
  }

  /** Texts that mean unknown, and texts that mean that the entry does not apply. */
  public static Sentinels of(Set<String> unknown, Set<String> notApplicable) {
    return unknown.isEmpty() && notApplicable.isEmpty()
        ? NONE
        : new Sentinels(unknown, notApplicable);
  }

  /** These and others. */
  public Sentinels and(Sentinels others) {
    Set<String> moreUnknown = new TreeSet<>(unknown);
    moreUnknown.addAll(others.unknown);
    Set<String> moreNotApplicable = new TreeSet<>(notApplicable);
    moreNotApplicable.addAll(others.notApplicable);
    return of(moreUnknown, moreNotApplicable);
  }

  boolean isEmpty() {
    return !any;
  }

  WordTable words() {
    return words;
  }

  /** True if this number, as written, means unknown. */
  boolean holds(double value) {
    for (double number : numbers) {
      if (number == value) {
        return true;
      }
    }
    return false;
  }

  /** True if this day, since 1970-01-01, means unknown. */
  boolean holdsDay(long day) {
    for (long sentinel : days) {
      if (sentinel == day) {
        return true;
      }
    }
    return false;
  }
}
