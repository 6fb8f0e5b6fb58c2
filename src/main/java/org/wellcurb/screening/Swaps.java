package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** Pairs of entries that may stand in each other's place. */
final class Swaps {
  /** Pairs that forms set side by side: in these the slip is likely by itself. */
  private static final List<List<String>> SIDE_BY_SIDE =
      List.of(
          List.of("water.static_level", "water.pumping_level"),
          List.of("site.latitude", "site.longitude"),
          List.of("well.casing_length", "well.casing_depth"),
          List.of("tank.acceptance", "tank.volume"),
          List.of("pressure.cut_in", "pressure.cut_out"));

  /** Where the same thing begins and ends: neighbours on a form too, but rarer to change over. */
  private static final List<List<String>> ENDS =
      List.of(
          List.of("well.screen_top", "well.screen_bottom"),
          List.of("well.liner_top", "well.liner_bottom"),
          List.of("well.filter_pack_top", "well.filter_pack_bottom"),
          List.of("grout.top", "grout.bottom"));

  private Swaps() {}

  /** The pairs that forms set side by side of which one is among these. */
  static List<Slip> sideBySide(WellRecord record, Collection<Entry> among) {
    Catalogue catalogue = record.catalogue();
    List<Slip> swaps = new ArrayList<>();
    for (List<String> pair : SIDE_BY_SIDE) {
      Entry first = catalogue.entry(catalogue.index(pair.get(0)));
      Entry second = catalogue.entry(catalogue.index(pair.get(1)));
      if (among.contains(first) || among.contains(second)) {
        // In the order of the catalogue, so that a pair found in two ways is one slip.
        boolean isInOrder = first.index() < second.index();
        add(record, isInOrder ? first : second, isInOrder ? second : first, swaps);
      }
    }
    return swaps;
  }

  /** Whether a slip changes over two entries that forms set side by side. */
  static boolean isSideBySide(Slip slip, Catalogue catalogue) {
    return isAmong(SIDE_BY_SIDE, slip, catalogue);
  }

  private static boolean isAmong(List<List<String>> pairs, Slip slip, Catalogue catalogue) {
    String one = catalogue.entry(slip.entry()).key();
    String other = slip.other() < 0 ? "" : catalogue.entry(slip.other()).key();
    return pairs.stream().anyMatch(pair -> pair.contains(one) && pair.contains(other));
  }

  /** Each pair of these that is where one thing begins and where it ends. */
  static List<Slip> ends(WellRecord record, Collection<Entry> among) {
    List<Entry> entries = among.stream().sorted(Comparator.comparingInt(Entry::index)).toList();
    List<Slip> swaps = new ArrayList<>();
    for (int a = 0; a < entries.size(); a++) {
      for (Entry second : entries.subList(a + 1, entries.size())) {
        add(record, entries.get(a), second, swaps);
      }
    }
    swaps.removeIf(slip -> !isAmong(ENDS, slip, record.catalogue()));
    return swaps;
  }

  private static void add(WellRecord record, Entry first, Entry second, List<Slip> swaps) {
    int i = first.index();
    int j = second.index();
    Unit unit = record.unit(i);
    if (unit != null
        && unit.equals(record.unit(j))
        && first.kind() == second.kind()
        && record.isPoint(i)
        && record.isPoint(j)
        && record.lo(i) != record.lo(j)) {
      swaps.add(new Slip(Slip.Kind.SWAPPED, i, record.lo(j), unit, j, record.lo(i)));
    }
  }
}
