package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Cuts the values of one key into the pieces that the cells of a column cannot tell apart. */
final class Pieces {
  /** Amounts nearer to each other than this share of the larger are equal everywhere. */
  private static final double EQUAL = 1e-9;

  private Pieces() {}

  /** For each piece, the rows that match it. */
  static List<BitSet> of(Entry key, List<List<Table.Cell>> column) {
    return key.kind().isAmount() ? amounts(key, column) : words(key, column);
  }

  private static List<BitSet> words(Entry key, List<List<Table.Cell>> column) {
    Set<String> words = new LinkedHashSet<>();
    if (key.kind() == Kind.CHOICE) {
      key.choices().forEach(choice -> words.add(choice.toLowerCase(Locale.ROOT)));
    } else if (key.kind() == Kind.YES_NO) {
      words.addAll(List.of("yes", "no"));
    } else {
      for (List<Table.Cell> cells : column) {
        for (Table.Cell cell : cells) {
          if (cell instanceof Table.Words some) {
            words.addAll(some.words());
          }
        }
      }
      // Any text that no cell names.
      words.add("\0");
    }
    List<BitSet> pieces = new ArrayList<>();
    for (String word : words) {
      BitSet rows = new BitSet();
      for (int r = 0; r < column.size(); r++) {
        rows.set(r, column.get(r).stream().anyMatch(cell -> holds(cell, word)));
      }
      pieces.add(rows);
    }
    return pieces;
  }

  private static boolean holds(Table.Cell cell, String word) {
    return cell instanceof Table.Any
        || (cell instanceof Table.Words some && some.words().contains(word));
  }

  private static List<BitSet> amounts(Entry key, List<List<Table.Cell>> column) {
    TreeSet<Double> ends = new TreeSet<>();
    for (List<Table.Cell> cells : column) {
      for (Table.Cell cell : cells) {
        if (cell instanceof Table.Range range) {
          ends.add(range.range().lo());
          ends.add(range.range().hi());
        }
      }
    }
    ends.remove(Double.NEGATIVE_INFINITY);
    ends.remove(Double.POSITIVE_INFINITY);
    List<Double> points = new ArrayList<>();
    for (double end : ends) {
      if (points.isEmpty() || !same(points.get(points.size() - 1), end)) {
        points.add(end);
      }
    }
    boolean whole = key.kind() == Kind.COUNT || key.kind() == Kind.DATE;
    List<BitSet> pieces = new ArrayList<>();
    double below = key.kind() == Kind.COUNT ? -1 : Double.NEGATIVE_INFINITY;
    for (double point : points) {
      stretch(pieces, column, below, point, whole);
      pieces.add(at(column, point));
      below = point;
    }
    stretch(pieces, column, below, Double.POSITIVE_INFINITY, whole);
    return pieces;
  }

  /** What lies between two points, both left out; for whole numbers and days it may be nothing. */
  private static void stretch(
      List<BitSet> pieces, List<List<Table.Cell>> column, double low, double high, boolean whole) {
    if (low >= high || (whole && high - low <= 1)) {
      return;
    }
    double inside =
        low == Double.NEGATIVE_INFINITY
            ? (high == Double.POSITIVE_INFINITY ? 0 : high - 1 - Math.abs(high))
            : high == Double.POSITIVE_INFINITY ? low + 1 + Math.abs(low) : low + (high - low) / 2;
    pieces.add(at(column, inside));
  }

  private static BitSet at(List<List<Table.Cell>> column, double value) {
    BitSet rows = new BitSet();
    for (int r = 0; r < column.size(); r++) {
      rows.set(r, column.get(r).stream().anyMatch(cell -> holds(cell, value)));
    }
    return rows;
  }

  private static boolean holds(Table.Cell cell, double value) {
    if (!(cell instanceof Table.Range range)) {
      return cell instanceof Table.Any;
    }
    double low = range.range().lo();
    double high = range.range().hi();
    boolean above = same(low, value) ? range.loIncluded() : low < value;
    boolean below = same(high, value) ? range.hiIncluded() : value < high;
    return above && below;
  }

  private static boolean same(double a, double b) {
    double larger = Math.max(Math.abs(a), Math.abs(b));
    return a == b || (!Double.isInfinite(larger) && Math.abs(a - b) <= EQUAL * larger);
  }
}
