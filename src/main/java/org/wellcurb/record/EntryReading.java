package org.wellcurb.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Expected;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;

/** What the reader of cells keeps at hand of one entry. */
final class EntryReading {
  private final Entry entry;
  private final @Nullable Expected expected;
  private final WordTable choices;
  private final boolean doubtsZero;

  EntryReading(Entry entry) {
    this.entry = entry;
    this.expected = expected(entry);
    doubtsZero = DoubtedZeros.isDoubted(entry);
    List<String> words = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < entry.choices().size(); i++) {
      words.add(entry.choices().get(i));
      words.addAll(entry.spellings().get(i));
      while (places.size() < words.size()) {
        places.add(i);
      }
    }
    choices = WordTable.of(words, places);
  }

  int index() {
    return entry.index();
  }

  Kind kind() {
    return entry.kind();
  }

  /** True for the number of the record. */
  boolean isIdentity() {
    return entry.index() == 0;
  }

  /** A depth to water, which may be written as {@code flowing} or {@code dry}. */
  boolean isWaterLevel() {
    return entry.datum() == Datum.WATER && entry.kind() == Kind.LENGTH;
  }

  /** True if a bare 0 is doubted here, see {@link DoubtedZeros}. */
  boolean doubtsZero() {
    return doubtsZero;
  }

  /** The amounts that it takes; null for words and dates. */
  @Nullable Expected expected() {
    return expected;
  }

  /** Place of the choice by its word. */
  WordTable choices() {
    return choices;
  }

  /** The unit of a bare number; null for words. */
  @Nullable Unit unit(UnitSystem system) {
    return entry.unit(system);
  }

  /** The unit in which one written in this is taken; null if it is of the wrong dimension. */
  @Nullable Unit taken(Unit unit) {
    return expected == null ? null : expected.taken(unit);
  }

  private static @Nullable Expected expected(Entry entry) {
    Dimension dimension = entry.kind().dimension();
    if (dimension == null || entry.kind() == Kind.DATE) {
      return null;
    }
    Expected base = Expected.of(dimension, entry.mayBeNegative());
    return switch (entry.kind()) {
      case COUNT -> base.counting(nouns(entry.key()));
      case PRESSURE_OR_HEAD -> base.orHead();
      case ANGLE -> base.within(entry.plausible().hi());
      default -> entry.datum() == Datum.WATER ? base.plusIsUnclear() : base;
    };
  }

  /** What is counted, from the last part of the key: {@code grout.bags} may be {@code 12 bags}. */
  private static List<String> nouns(String key) {
    String last = key.substring(key.lastIndexOf('.') + 1);
    String thing = last.substring(last.lastIndexOf('_') + 1);
    return thing.endsWith("s") ? List.of(thing, thing.substring(0, thing.length() - 1)) : List.of();
  }
}
