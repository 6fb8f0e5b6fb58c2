package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.drawing.BatchMap;
import org.wellcurb.report.drawing.Drawing;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;
import org.wellcurb.screening.Harm;

/** The squares of a map come out the same whatever the order and the parts. */
class MapCellsTest {
  private static final Words EN = Words.in(Language.EN);

  private static List<Place> places(long seed, int count, double degrees) {
    Random random = new Random(seed);
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(
          new Place(
              -degrees + 2 * degrees * random.nextDouble(),
              -degrees + 2 * degrees * random.nextDouble(),
              100));
    }
    return places;
  }

  private static MapCells of(List<Place> places) {
    MapCells cells = new MapCells(100);
    for (Place place : places) {
      cells.add(place, (int) (Math.abs(place.latitude() * 1e6) % 5));
    }
    return cells;
  }

  @Test
  void orderAndPartsDoNotMatter() {
    long seed = 7;
    List<Place> places = places(seed, 20_000, 3);
    MapCells whole = of(places);
    List<Place> shuffled = new ArrayList<>(places);
    Collections.shuffle(shuffled, new Random(seed));
    same(whole, of(shuffled));
    MapCells parts = new MapCells(100);
    for (int from = 0; from < places.size(); from += 777) {
      parts.add(of(places.subList(from, Math.min(places.size(), from + 777))));
    }
    same(whole, parts);
    assertTrue(whole.all().size() <= MapCells.MOST);
    long records = 0;
    for (MapCells.Cell cell : whole.all()) {
      for (long count : cell.counts()) {
        records += count;
      }
    }
    assertEquals(places.size(), records, "every record is on the map");
  }

  private static void same(MapCells a, MapCells b) {
    assertEquals(a.step(), b.step());
    assertEquals(a.all().size(), b.all().size());
    for (int i = 0; i < a.all().size(); i++) {
      assertEquals(a.all().get(i), b.all().get(i));
    }
  }

  @Test
  void nothingIsDrawnOfNowhere() {
    assertNull(BatchMap.of("map", "", new MapCells(100), List.of(), EN));
  }

  @Test
  void oneWellIsDrawn() {
    Drawing map = BatchMap.of("map", "", of(List.of(new Place(45, -75, 100))), List.of(), EN);
    assertNotNull(map);
    assertTrue(map.svg().contains("class=\"hub\"") || map.svg().contains("<circle"), map.svg());
  }

  @Test
  void aMarkLeadsToTheSheetOfTheGravestRecordThere() {
    Place here = new Place(45, -75, 100);
    MapCells cells = of(List.of(here, new Place(45.2, -75.1, 100)));
    List<RecordLine> lines =
        List.of(line("W<1>", here, "sheets/w-1.html"), line("W2", here, "sheets/w-2.html"));
    Drawing map = BatchMap.of("map", "", cells, lines, EN);
    assertNotNull(map);
    String svg = map.svg();
    assertEquals(1, svg.split("<a href=", -1).length - 1, svg);
    assertTrue(svg.contains("<a href=\"sheets/w-1.html\" tabindex=\"-1\">"), svg);
    assertTrue(svg.contains("<title>W&lt;1&gt;: too deep; W2: too deep</title>"), svg);
    // A record without a sheet, or without a place, leads nowhere.
    List<RecordLine> none =
        List.of(line("W1", here, ""), line("W2", null, "a"), line("W3", new Place(1, 1, 1), "a"));
    map = BatchMap.of("map", "", cells, none, EN);
    assertNotNull(map);
    assertTrue(!map.svg().contains("<a "), map.svg());
  }

  private static RecordLine line(String id, @Nullable Place where, String sheet) {
    KindCounts kinds = new KindCounts(1, 0, 0, 0);
    return new RecordLine(
        id, "f.csv", 2, "p", "", "", kinds, Harm.OTHER, 0, "too deep", sheet, where);
  }

  @Test
  void marksStayInTheDrawing() {
    for (long seed = 1; seed <= 40; seed++) {
      double wide = Math.pow(10, -3 + 4 * new Random(seed).nextDouble());
      Drawing map =
          BatchMap.of("map", "", of(places(seed, 200, Math.min(60, wide))), List.of(), EN);
      assertNotNull(map);
      java.util.regex.Matcher x =
          java.util.regex.Pattern.compile(" c?x=\"(-?[0-9.]+)\"").matcher(map.svg());
      while (x.find()) {
        double at = Double.parseDouble(x.group(1));
        assertTrue(at >= -1 && at <= 373, "seed " + seed + ": " + at);
      }
    }
  }
}
