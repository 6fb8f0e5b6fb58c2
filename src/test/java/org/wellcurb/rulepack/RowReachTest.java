package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Frame;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordReader;

/** Which rows can be reached agrees with trying every record of a grid that leaves nothing out. */
class RowReachTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final List<Entry> BY =
      Stream.of("tank.count", "well.casing_diameter", "well.casing_material", "site.zone")
          .map(CATALOGUE::find)
          .toList();

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void agreesWithTryingEveryRecord(long seed) throws FormulaException {
    Random random = new Random(seed);
    for (int i = 0; i < 25; i++) {
      check(random, "seed " + seed + ", table " + i);
    }
  }

  private static void check(Random random, String hint) throws FormulaException {
    List<Entry> by = new ArrayList<>(BY);
    java.util.Collections.shuffle(by, random);
    by = by.subList(0, 1 + random.nextInt(2));
    List<List<List<Table.Cell>>> cells = new ArrayList<>();
    List<Table.Row> rows = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int r = 0; r < count; r++) {
      List<List<Table.Cell>> row = new ArrayList<>();
      for (Entry key : by) {
        row.add(List.of(TableCell.read(cell(random, key), key)));
      }
      cells.add(row);
      rows.add(
          new Table.Row(
              row.stream().map(one -> one.get(0)).toList(),
              new Table.Amount(r, Units.METRE, Double.NaN, null)));
    }
    Table table = new Table("test", by, Dimension.LENGTH, rows);
    TreeSet<Integer> reached = tried(table, by);
    RowReach reach = new RowReach(by, cells);
    TreeSet<Integer> claimed = new TreeSet<>();
    for (int r = 0; r < count; r++) {
      if (reach.isReachable(r)) {
        claimed.add(r);
      }
    }
    boolean leavesNothing = !reached.remove(-1);
    assertEquals(reached, claimed, () -> hint + ": " + table);
    assertEquals(leavesNothing, reach.isComplete(), () -> hint + ": " + table);
  }

  /** The rows that some record comes to; -1 if one comes to none. */
  private static TreeSet<Integer> tried(Table table, List<Entry> by) {
    Frame frame = new Frame(CATALOGUE);
    Evaluation evaluation = new Evaluation(frame, new PackScope(Map.of(), Map.of()));
    TreeSet<Integer> reached = new TreeSet<>();
    for (Map<String, String> given : grid(by)) {
      frame.take(RecordReader.of(given));
      reached.add(evaluation.hasNoRow(table) ? -1 : evaluation.row(table));
    }
    return reached;
  }

  private static List<Map<String, String>> grid(List<Entry> by) {
    List<Map<String, String>> all = List.of(Map.of());
    for (Entry key : by) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> given : all) {
        for (String value : values(key)) {
          Map<String, String> next = new LinkedHashMap<>(given);
          next.put(key.key(), value);
          longer.add(next);
        }
      }
      all = longer;
    }
    return all;
  }

  private static List<String> values(Entry key) {
    return switch (key.key()) {
      case "tank.count" -> List.of("0", "1", "2", "3", "4", "5", "6", "7");
      case "well.casing_diameter" ->
          IntStream.rangeClosed(1, 12).mapToObj(inches -> inches + " in").toList();
      case "site.zone" -> List.of("hill", "plain", "coast");
      default -> key.choices();
    };
  }

  /** Ends of ranges are even inches, so that the grid has a value at and between all of them. */
  private static String cell(Random random, Entry key) {
    if (random.nextInt(5) == 0) {
      return "*";
    }
    return switch (key.key()) {
      case "site.zone" -> List.of("hill", "Plain").get(random.nextInt(2));
      case "well.casing_material" -> key.choices().get(random.nextInt(key.choices().size()));
      case "tank.count" -> range(random, 1 + random.nextInt(6), 1, "");
      default -> range(random, 2 + 2 * random.nextInt(4), 2, " in");
    };
  }

  private static String range(Random random, int from, int step, String unit) {
    String low = from + unit;
    String high = from + step * random.nextInt(2) + unit;
    return switch (random.nextInt(7)) {
      case 0 -> low;
      case 1 -> low + " to " + high;
      case 2 -> ">= " + low;
      case 3 -> "> " + low;
      case 4 -> "<= " + low;
      case 5 -> "< " + low;
      default -> ">= " + low + " and < " + (from + step) + unit;
    };
  }
}
