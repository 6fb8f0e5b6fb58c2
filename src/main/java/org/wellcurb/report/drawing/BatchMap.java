package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.MapCells;
import org.wellcurb.report.Place;
import org.wellcurb.report.RecordLine;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;

/**
 * Where the records of a batch stand: a mark for each square, by the gravest finding in it. Shapes
 * tell the kinds apart, not colours; a mark is filled by the share of its records that have such a
 * finding, for in squares of many records hardly one has none.
 */
public final class BatchMap {
  private static final int WIDTH = 372;
  private static final int EDGE = 13;
  private static final int MOST_HEIGHT = 326;

  /** How near to a mark one has to point. */
  private static final int REACH = 9;

  /** Records of one square that are named where one points at it. */
  private static final int NAMED = 5;

  private static final int LEAST_HEIGHT = 80;

  /** Records of a square from which on its share is said. */
  private static final int LEAST_FOR_SHARE = 20;

  /** Kilometres of one degree of latitude on a sphere of the Earth's mean size. */
  private static final double DEGREE = 111.195;

  private BatchMap() {}

  /**
   * The map; null where no record has a position.
   *
   * @param id its place on the page
   * @param pack title of the pack that judged the records; empty where one judged all
   * @param records the records that the page lists, worst first: a mark leads to the first sheet
   */
  public static @Nullable Drawing of(
      String id, String pack, MapCells cells, List<RecordLine> records, Words words) {
    String title = pack.isEmpty() ? words.say("map.title") : words.say("map.title.pack", pack);
    List<MapCells.Cell> all = cells.all();
    if (all.isEmpty()) {
      return null;
    }
    double step = cells.step();
    double south = 90;
    double north = -90;
    double west = 180;
    double east = -180;
    for (MapCells.Cell cell : all) {
      south = Math.min(south, cell.south());
      north = Math.max(north, cell.south() + step);
      west = Math.min(west, cell.west());
      east = Math.max(east, cell.west() + step);
    }
    double narrow = Math.max(0.05, Math.cos(Math.toRadians((south + north) / 2)));
    double wide = (east - west) * narrow;
    double scale = Math.min((WIDTH - 2 * EDGE) / wide, (MOST_HEIGHT - 2 * EDGE) / (north - south));
    double height = Math.max(LEAST_HEIGHT, (north - south) * scale + 2 * EDGE);
    Svg svg = new Svg(id, WIDTH, title);
    svg.box("rule", 1, 1, height - 1, WIDTH - 2);
    Map<MapCells.Cell, List<RecordLine>> here = here(cells, all, records);
    long[] sums = new long[MapCells.NONE + 1];
    // Squares without a finding first, so that they hide none with one.
    for (int kind = MapCells.NONE; kind >= 0; kind--) {
      for (MapCells.Cell cell : all) {
        if (gravest(cell) == kind) {
          double x = (WIDTH - wide * scale) / 2 + (cell.west() + step / 2 - west) * narrow * scale;
          double y = height / 2 + ((north + south) / 2 - cell.south() - step / 2) * scale;
          List<RecordLine> lines = here.getOrDefault(cell, List.of());
          svg.open(sheet(lines), names(lines));
          if (!lines.isEmpty()) {
            svg.circle("reach", x, y, REACH);
          }
          mark(svg, kind, x, y, size(cell), share(cell, kind));
          svg.shut();
          sums[kind]++;
        }
      }
    }
    double bottom = ruler(svg, scale, height);
    return new Drawing(
        id,
        title,
        svg.close(bottom),
        legend(svg, words, sums),
        said(words, all, cells, new double[] {south, north, west, east}),
        List.of());
  }

  /** The records with a sheet, by the square that they stand in. */
  private static Map<MapCells.Cell, List<RecordLine>> here(
      MapCells cells, List<MapCells.Cell> all, List<RecordLine> records) {
    Map<MapCells.Cell, List<RecordLine>> here = new HashMap<>();
    for (RecordLine line : records) {
      Place where = line.where();
      MapCells.@Nullable Cell cell = where == null ? null : cells.of(where, all);
      if (cell != null && !line.sheet().isEmpty()) {
        here.computeIfAbsent(cell, none -> new ArrayList<>()).add(line);
      }
    }
    return here;
  }

  private static String sheet(List<RecordLine> lines) {
    return lines.isEmpty() ? "" : lines.get(0).sheet();
  }

  private static String names(List<RecordLine> lines) {
    return lines.stream()
        .limit(NAMED)
        .map(line -> line.recordId() + ": " + line.first())
        .collect(Collectors.joining("; ", "", lines.size() > NAMED ? "; …" : ""));
  }

  private static int gravest(MapCells.Cell cell) {
    int kind = 0;
    while (kind < MapCells.NONE && cell.counts().get(kind) == 0) {
      kind++;
    }
    return kind;
  }

  private static double size(MapCells.Cell cell) {
    return Math.min(7, 2.6 + 1.3 * Math.log10((double) records(cell)));
  }

  private static long records(MapCells.Cell cell) {
    return cell.counts().stream().mapToLong(Long::longValue).sum();
  }

  /** The share of the records of a square whose gravest finding is of this kind. */
  private static double share(MapCells.Cell cell, int kind) {
    return (double) cell.counts().get(kind) / records(cell);
  }

  /**
   * A mark.
   *
   * @param share how much of its area is filled
   */
  private static void mark(Svg svg, int kind, double x, double y, double r, double share) {
    if (kind == MapCells.NONE) {
      svg.circle("dot", x, y, 1.3);
      return;
    }
    if (share < 1) {
      shape(svg, "seal", kind, x, y, r);
    }
    shape(svg, "hub", kind, x, y, r * Math.sqrt(share));
  }

  private static void shape(Svg svg, String style, int kind, double x, double y, double r) {
    if (kind == FindingKind.DEFICIENCY.ordinal()) {
      svg.path(style, shape(x, y, 0, -r, r, 0, 0, r, -r, 0));
    } else if (kind == FindingKind.DISCREPANCY.ordinal()) {
      // About the middle of its area, so that a smaller one lies within.
      svg.path(style, shape(x, y, 0, -1.2 * r, r, 0.6 * r, -r, 0.6 * r));
    } else if (kind == FindingKind.OMISSION.ordinal()) {
      svg.box(style, x - r * 0.8, y - r * 0.8, y + r * 0.8, 1.6 * r);
    } else {
      svg.circle(style, x, y, r * 0.9);
    }
  }

  private static String shape(double x, double y, double... points) {
    StringBuilder data = new StringBuilder();
    for (int i = 0; i < points.length; i += 2) {
      data.append(i == 0 ? 'M' : 'L');
      data.append(Svg.number(x + points[i])).append(' ').append(Svg.number(y + points[i + 1]));
    }
    return data.append('Z').toString();
  }

  /** A length that can be read off, and the way to the north. */
  private static double ruler(Svg svg, double scale, double height) {
    double most = 100 / (scale / DEGREE);
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double km = most >= 5 * power ? 5 * power : most >= 2 * power ? 2 * power : power;
    double length = km * scale / DEGREE;
    double y = height + 16;
    svg.line("setting", 8, y, 8 + length, y);
    String text =
        km >= 1
            ? String.format(Locale.ROOT, "%.0f km", km)
            : String.format(Locale.ROOT, "%.0f m", 1000 * km);
    svg.text("label", 14 + length, y + 4, text);
    double x = WIDTH - 10;
    svg.line("cut", x, y + 6, x, y - 14);
    svg.path("cut", shape(x, y - 16, 0, 0, 4, 8, -4, 8));
    svg.text("label", x - 18, y + 4, "N");
    return height + 24;
  }

  private static List<Sign> legend(Svg svg, Words words, long[] sums) {
    Legend legend = new Legend(svg);
    String[] keys = {
      "map.deficiency", "map.discrepancy", "map.omission", "map.advisory", "map.none"
    };
    for (int kind = 0; kind < sums.length; kind++) {
      if (sums[kind] > 0) {
        Svg small = svg.small();
        mark(small, kind, Legend.WIDTH / 2.0, Legend.MIDDLE, 6, kind == MapCells.NONE ? 1 : 0.4);
        legend.add(new Sign(small.closeSmall(), words.say(keys[kind])));
      }
    }
    legend.line(words.say("map.size"));
    legend.line(words.say("map.share"));
    return (svg.has("reach") ? legend.line(words.say("map.leads")) : legend).all();
  }

  private static List<String> said(
      Words words, List<MapCells.Cell> all, MapCells cells, double[] edges) {
    long[] records = new long[MapCells.NONE + 1];
    for (MapCells.Cell cell : all) {
      for (int kind = 0; kind < records.length; kind++) {
        records[kind] += cell.counts().get(kind);
      }
    }
    List<String> said = new ArrayList<>();
    said.add(
        words.say("map.said.counts", records[0], records[1], records[2], records[3], records[4]));
    said.add(
        words.say(
            "map.said.edges",
            degrees(edges[0]),
            degrees(edges[1]),
            degrees(edges[2]),
            degrees(edges[3])));
    said.add(words.say("map.said.square", Math.round(1000 * cells.step() * DEGREE)));
    double[] shares =
        all.stream()
            .filter(cell -> records(cell) >= LEAST_FOR_SHARE)
            .mapToDouble(cell -> share(cell, FindingKind.DEFICIENCY.ordinal()))
            .sorted()
            .toArray();
    if (shares.length > 1) {
      said.add(
          words.say(
              "map.said.shares",
              shares.length,
              LEAST_FOR_SHARE,
              Math.round(100 * shares[0]),
              Math.round(100 * shares[shares.length / 2]),
              Math.round(100 * shares[shares.length - 1])));
    }
    if (cells.withoutPlace() > 0) {
      said.add(words.count("map.said.without", cells.withoutPlace()));
    }
    return said;
  }

  private static String degrees(double degrees) {
    return String.format(Locale.ROOT, "%.3f", degrees);
  }
}
