package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

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

  void spoiled(long seed, int wells, Path folder) throws IOException {
    Area area = new Area(seed, wells).plantCopies(wells / 250).plantCopying(4, 0.35).plantSlips(3);
    CrossResult result = area.check(folder);
    plantedCopies += area.copies.size();
    for (Duplicates.NearCopy near : result.duplicates().nearCopies()) {
      saidCopies++;
      long pair = ((long) near.first().place() << 32) | near.second().place();
      foundCopies += area.copies.contains(pair) ? 1 : 0;
    }
    plantedCopyists += area.copyists.size();
    Set<String> said = new HashSet<>();
    for (CrossResult.FigureHint hint : result.figures()) {
      if (hint.field() == Field.STATIC_LEVEL || !area.slippers.contains(hint.licence())) {
        said.add(hint.licence());
      }
    }
    saidCopyists += said.size();
    said.retainAll(area.copyists);
    foundCopyists += said.size();
    plantedSlips += area.slippers.size();
    for (CrossResult.SlipHint hint : result.slips()) {
      saidSlips++;
      foundSlips += area.slippers.contains(hint.group()) ? 1 : 0;
    }
  }

  void clean(long seed, int wells, Path folder) throws IOException {
    CrossResult result = new Area(seed, wells).check(folder);
    cleanRegions++;
    falseAlarms += result.figures().isEmpty() && result.slips().isEmpty() ? 0 : 1;
    boolean isApart =
        result.contractors().stream().anyMatch(rate -> rate.q() <= CrossResult.ACCEPTED);
    falseRates += isApart ? 1 : 0;
    saidCopies += result.duplicates().nearCopies().size();
  }

  double recall(int found, int planted) {
    return planted == 0 ? 1 : (double) found / planted;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "near copies: recall %.3f, precision %.3f of %d%n"
            + "copied levels: recall %.3f, precision %.3f of %d%n"
            + "unit slips: recall %.3f, precision %.3f of %d%n"
            + "clean regions: %d; with a false hint on figures or units %d, on rates %d%n",
        recall(foundCopies, plantedCopies),
        recall(foundCopies, saidCopies),
        plantedCopies,
        recall(foundCopyists, plantedCopyists),
        recall(foundCopyists, saidCopyists),
        plantedCopyists,
        recall(foundSlips, plantedSlips),
        recall(foundSlips, saidSlips),
        plantedSlips,
        cleanRegions,
        falseAlarms,
        falseRates);
  }

  /** Prints the figures of the docs: seeds, wells a region. */
  public static void main(String[] arguments) throws IOException {
    int seeds = Integer.parseInt(arguments[0]);
    int wells = Integer.parseInt(arguments[1]);
    Path folder = java.nio.file.Files.createTempDirectory("trial");
    RegionTrial trial = new RegionTrial();
    for (long seed = 1; seed <= seeds; seed++) {
      trial.spoiled(seed, wells, folder);
      trial.clean(1000 + seed, wells, folder);
    }
    System.out.print(trial);
  }
}
