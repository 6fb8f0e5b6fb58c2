package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** How well planted faults are found, and how often something is said of clean regions. */
final class RegionTrial {
  int foundCopies;
  int plantedCopies;
  int saidCopies;
  int foundCopyists;
  int plantedCopyists;
  int saidCopyists;
  int foundSlips;
  int plantedSlips;
  int saidSlips;
  int cleanRegions;
  int falseAlarms;
  int falseRates;
  int falseRules;
  int falseCopies;
  final Map<String, int[]> foundByHabit = new TreeMap<>();
  final Map<String, int[]> foundByChange = new TreeMap<>();

  /** What was said of clean regions. */
  final List<String> wrong = new ArrayList<>();

  void spoiled(long seed, int wells, Path folder) throws IOException {
    Area area =
        new Area(seed, wells)
            .plantCopies(wells / 250)
            .plantCopying(3, 0.35)
            .plantHabits(1)
            .plantSlips(3);
    CrossResult result = area.check(folder);
    copies(area, result);
    plantedCopyists += area.copyists.size();
    Set<String> said = new HashSet<>();
    for (CrossResult.FigureHint hint : result.figures()) {
      // Depths in metres are odd figures among feet: that is found as a slip.
      if (hint.field() == Field.STATIC_LEVEL || !area.slippers.contains(hint.licence())) {
        said.add(hint.licence());
      }
    }
    saidCopyists += said.size();
    for (Map.Entry<String, String> planted : area.copyists.entrySet()) {
      boolean isFound = said.contains(planted.getKey());
      foundCopyists += isFound ? 1 : 0;
      foundByHabit.computeIfAbsent(planted.getValue(), habit -> new int[2])[isFound ? 0 : 1]++;
    }
    plantedSlips += area.slippers.size();
    for (CrossResult.SlipHint hint : result.slips()) {
      saidSlips++;
      foundSlips += area.slippers.contains(hint.group()) ? 1 : 0;
    }
  }

  /** Forms of five dates and five measured entries, with copies. */
  void dated(long seed, int wells, Path folder) throws IOException {
    Area area = new Area(seed, wells, Area.Form.DATED).plantCopies(wells / 250);
    copies(area, area.check(folder));
  }

  private void copies(Area area, CrossResult result) {
    plantedCopies += area.copies.size();
    Set<Long> found = new HashSet<>();
    for (Duplicates.NearCopy near : result.duplicates().nearCopies()) {
      saidCopies += near.size() - 1;
      int before = foundCopies;
      for (Seen first : near.records()) {
        for (Seen second : near.records()) {
          long pair = ((long) first.place() << 32) | second.place();
          if (area.copies.contains(pair) && found.add(pair)) {
            foundCopies++;
          }
        }
      }
      if (before == foundCopies) {
        wrong.add("no copy: " + near);
      }
    }
    area.changes.forEach(
        (pair, change) ->
            foundByChange
                .computeIfAbsent(change, all -> new int[2])[found.contains(pair) ? 0 : 1]++);
  }

  void clean(long seed, int wells, Path folder) throws IOException {
    clean(seed, wells, Area.Form.FULL, folder);
  }

  void clean(long seed, int wells, Area.Form form, Path folder) throws IOException {
    CrossResult result = new Area(seed, wells, form).check(folder);
    result.rules().forEach(hint -> wrong.add(seed + ": " + hint));
    result.figures().forEach(hint -> wrong.add(seed + ": " + hint));
    result.slips().forEach(hint -> wrong.add(seed + ": " + hint));
    result.duplicates().nearCopies().forEach(near -> wrong.add(seed + ": " + near));
    cleanRegions++;
    falseAlarms += result.figures().isEmpty() && result.slips().isEmpty() ? 0 : 1;
    boolean isApart =
        Stream.of(result.contractors(), result.zones(), result.years())
            .flatMap(List::stream)
            .anyMatch(rate -> rate.q() <= CrossResult.ACCEPTED);
    falseRates += isApart ? 1 : 0;
    falseRules += result.rules().isEmpty() ? 0 : 1;
    falseCopies += (int) result.duplicates().nearCopyTotal();
    saidCopies += (int) result.duplicates().nearCopyTotal();
  }

  double recall(int found, int planted) {
    return planted == 0 ? 1 : (double) found / planted;
  }

  private static String lines(Map<String, int[]> found) {
    StringBuilder lines = new StringBuilder();
    found.forEach(
        (what, counts) ->
            lines.append(
                String.format(
                    Locale.ROOT, "  %s: %d of %d%n", what, counts[0], counts[0] + counts[1])));
    return lines.toString();
  }

  /** A share with its standard error. */
  private String share(int hits, int of) {
    double share = recall(hits, of);
    double error = Math.sqrt(share * (1 - share) / Math.max(1, of));
    return String.format(Locale.ROOT, "%.3f +- %.3f (%d of %d)", share, error, hits, of);
  }

  @Override
  public String toString() {
    return String.format(
            Locale.ROOT,
            "near copies: recall %s, precision %s%n"
                + "figures made up: recall %s, precision %s%n"
                + "unit slips: recall %s, precision %s%n"
                + "clean regions with a false hint: on figures or units %s, on rates %s,"
                + " on rules %s; near copies in them all: %d%n",
            share(foundCopies, plantedCopies),
            share(foundCopies, saidCopies),
            share(foundCopyists, plantedCopyists),
            share(foundCopyists, saidCopyists),
            share(foundSlips, plantedSlips),
            share(foundSlips, saidSlips),
            share(falseAlarms, cleanRegions),
            share(falseRates, cleanRegions),
            share(falseRules, cleanRegions),
            falseCopies)
        + lines(foundByChange)
        + lines(foundByHabit)
        + String.join("\n", wrong);
  }

  /** Prints the figures of the docs: seeds, wells a region. */
  public static void main(String[] arguments) throws IOException {
    int seeds = Integer.parseInt(arguments[0]);
    int wells = Integer.parseInt(arguments[1]);
    Path folder = java.nio.file.Files.createTempDirectory("trial");
    RegionTrial full = new RegionTrial();
    RegionTrial dated = new RegionTrial();
    for (long seed = 1; seed <= seeds; seed++) {
      full.spoiled(seed, wells, folder);
      full.clean(1000 + seed, wells, folder);
      dated.dated(seed, wells, folder);
      dated.clean(1000 + seed, wells, Area.Form.DATED, folder);
    }
    System.out.println("forms of one date and ten measured entries\n" + full);
    System.out.println("forms of five dates and five measured entries\n" + dated);
  }
}
