package org.wellcurb.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Whole processes side by side on one file made from a seed: the bare read and the program, in
 * turn, so that both see the machine alike. Prints seconds and their ratio as min/median/max.
 */
public final class SideBySide {
  private static final long SEED = 1;

  private SideBySide() {}

  /** RECORDS ROUNDS. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    long records = Long.parseLong(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]);
    Path folder = Files.createTempDirectory("wellcurb-bench");
    Path file = folder.resolve("wells.csv");
    Path out = folder.resolve("report");
    BigFile.write(SEED, records, file);
    List<String> bare = List.of("org.wellcurb.bench.BareRead", file.toString());
    List<String> ours = new ArrayList<>(List.of("org.wellcurb.cli.Main", "screen"));
    ours.addAll(List.of(file.toString(), "--rules", "fenwick-county", "--as-of", "2026-01-01"));
    ours.addAll(List.of("--sheets", "none", "--notices", "none", "--crosscheck", "no"));
    ours.addAll(List.of("--quiet", "--out", out.toString()));
    double[] read = new double[rounds];
    double[] screened = new double[rounds];
    double[] ratio = new double[rounds];
    for (int i = 0; i < rounds; i++) {
      read[i] = seconds(bare);
      screened[i] = seconds(ours);
      ratio[i] = screened[i] / read[i];
    }
    print("bare read, s", read);
    print("screen, s", screened);
    print("screen / bare read", ratio);
    System.out.println("file and report: " + folder);
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>();
    all.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    all.addAll(List.of("-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path")));
    all.addAll(command);
    long start = System.nanoTime();
    int code =
        new ProcessBuilder(all)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start()
            .waitFor();
    if (code != 0) {
      throw new IllegalStateException(command.get(0) + " ended with " + code);
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static void print(String what, double[] figures) {
    Arrays.sort(figures);
    System.out.printf(
        Locale.ROOT,
        "%-20s %7.2f %7.2f %7.2f%n",
        what,
        figures[0],
        figures[figures.length / 2],
        figures[figures.length - 1]);
  }
}
