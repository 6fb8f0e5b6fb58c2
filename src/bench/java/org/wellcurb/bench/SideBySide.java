package org.wellcurb.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/**
 * The program and its peers side by side, as whole processes, in turn, so that all see the machine
 * alike; on files made from a seed. Prints seconds, ratios and heaps as min, median and max, each
 * ratio beside what is aimed at.
 */
public final class SideBySide {
  private static final long SEED = 1;
  private static final String PACK = "fenwick-county";
  private static final int JSON_SHARE = 3;
  private static final int SMALL_HEAP_RECORDS = 100_000;
  private static final int FEW_RULES = 60;
  private static final int MANY_RULES = 600;

  private final long records;
  private final int rounds;
  private final Path folder;
  private final Path out;
  private final Figures figures = new Figures();

  private SideBySide(long records, int rounds, Path folder) {
    this.records = records;
    this.rounds = rounds;
    this.folder = folder;
    this.out = folder.resolve("report");
  }

  /**
   * RECORDS ROUNDS [PART...]; parts are {@code table}, {@code json}, {@code rules}, {@code one},
   * {@code heap}; all without any.
   */
  public static void main(String[] arguments)
      throws IOException, InterruptedException, PackException {
    List<String> parts = List.of(arguments).subList(2, arguments.length);
    Path folder = Files.createTempDirectory("wellcurb-bench");
    try {
      SideBySide bench =
          new SideBySide(Long.parseLong(arguments[0]), Integer.parseInt(arguments[1]), folder);
      System.out.printf("%-46s %8s %8s %8s  %s%n", "", "min", "median", "max", "aim");
      for (String part :
          parts.isEmpty() ? List.of("table", "json", "rules", "one", "heap") : parts) {
        bench.part(part);
      }
    } finally {
      delete(folder);
    }
  }

  private void part(String part) throws IOException, InterruptedException, PackException {
    switch (part) {
      case "table" -> table();
      case "json" -> json();
      case "rules" -> rules();
      case "one" -> one();
      case "heap" -> heap();
      default -> throw new IllegalArgumentException("no part " + part);
    }
  }

  private Path file(String name, long many) throws IOException {
    Path file = folder.resolve(name);
    BigFile.write(SEED, many, file);
    return file;
  }

  private double screen(Path file, String pack, String... more)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(screening(file, pack, more)));
    command.set(0, program().toString());
    return Timed.seconds(command, home());
  }

  /** The start script of the distribution, unpacked once, with its archive of classes made. */
  private Path program() throws IOException, InterruptedException {
    Path program = folder.resolve("wellcurb-1.0.0/bin/wellcurb");
    if (!Files.exists(program)) {
      Path zip = Path.of("target/wellcurb-1.0.0.zip");
      if (!Files.exists(zip)) {
        throw new IllegalStateException("no " + zip + ": mvn package makes it");
      }
      unpack(zip);
      Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
      screenOne(program);
    }
    return program;
  }

  private Map<String, String> home() {
    return Map.of("HOME", folder.toString(), "JAVA_HOME", System.getProperty("java.home"));
  }

  private double screenOne(Path program) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString(), "screen"));
    command.addAll(List.of(file("one.csv", 1).toString(), "--rules", PACK, "--sheets", "all"));
    command.addAll(List.of("--as-of", "2026-01-01", "--out", out.toString()));
    return Timed.seconds(command, home());
  }

  private String[] screening(Path file, String pack, String... more) {
    List<String> ours = new ArrayList<>(List.of("org.wellcurb.cli.Main", "screen"));
    ours.addAll(List.of(file.toString(), "--rules", pack, "--as-of", "2026-01-01"));
    ours.addAll(List.of("--sheets", "none", "--notices", "none", "--quiet"));
    ours.addAll(List.of("--out", out.toString()));
    ours.addAll(List.of(more));
    return ours.toArray(String[]::new);
  }

  private void table() throws IOException, InterruptedException, PackException {
    Path file = file("wells.csv", records);
    int many = Comparison.count(PackLoader.load(PACK));
    Path script = folder.resolve("peer.py");
    PythonPeer.write(script, Comparison.some(many));
    boolean hasPython = hasPython();
    Path bySql = folder.resolve("sql.csv");
    Path byPython = folder.resolve("python.csv");
    for (int i = 0; i < rounds; i++) {
      String name = file.toString();
      figures.add(BARE, Timed.java(List.of(), "org.wellcurb.bench.BareRead", name));
      figures.add(SCREEN, screen(file, PACK));
      figures.add(NO_CROSS, screen(file, PACK, "--crosscheck", "no"));
      String[] sql = {"org.wellcurb.bench.SqlPeer", name, bySql.toString(), "" + many};
      figures.add(SQL, Timed.java(List.of(), sql));
      if (hasPython) {
        List<String> python = List.of("python3", script.toString(), name, byPython.toString());
        figures.add(PYTHON, Timed.seconds(python, Map.of()));
      }
    }
    System.out.println(
        records
            + " records, "
            + Files.size(file)
            + " bytes, "
            + many
            + " comparisons a record by each peer");
    for (String seconds : List.of(BARE, SCREEN, NO_CROSS, SQL, PYTHON)) {
      figures.print(seconds, "");
    }
    figures.printRatio(SCREEN, BARE, "at most 1.25");
    figures.printRatio(NO_CROSS, BARE, "");
    figures.printRatio(SCREEN, SQL, "at most 2");
    if (hasPython) {
      figures.printRatio(PYTHON, SCREEN, "at least 4");
      long failures = lines(byPython);
      if (failures != lines(bySql)) {
        throw new IllegalStateException("the peers disagree: " + failures + " and " + lines(bySql));
      }
    } else {
      System.out.println("no python3 here: its part is skipped");
    }
    Files.delete(file);
  }

  private static final String BARE = "bare table read, s";
  private static final String SCREEN = "screen, s";
  private static final String NO_CROSS = "screen without cross-checks, s";
  private static final String SQL = "SQL engine, s";
  private static final String PYTHON = "Python script, s";
  private static final String TREES = "bare JSON trees, s";
  private static final String JSON = "screen JSON lines, s";

  private void json() throws IOException, InterruptedException {
    Path file = file("wells.ndjson", records / JSON_SHARE);
    for (int i = 0; i < rounds; i++) {
      figures.add(TREES, Timed.java(List.of(), "org.wellcurb.bench.BareJson", file.toString()));
      figures.add(JSON, screen(file, PACK, "--crosscheck", "no"));
    }
    System.out.println(records / JSON_SHARE + " records, " + Files.size(file) + " bytes of JSON");
    figures.print(TREES, "");
    figures.print(JSON, "");
    figures.printRatio(TREES, JSON, "at least 0.60");
    Files.delete(file);
  }

  private void rules() throws IOException, InterruptedException {
    Path file = file("wells.csv", records / JSON_SHARE);
    Path few = folder.resolve("few");
    Path many = folder.resolve("many");
    RulePile.write(few, FEW_RULES);
    RulePile.write(many, MANY_RULES);
    String byFew = FEW_RULES + " rules, s";
    String byMany = MANY_RULES + " rules, s";
    for (int i = 0; i < rounds; i++) {
      figures.add(byFew, screen(file, few.toString(), "--crosscheck", "no"));
      figures.add(byMany, screen(file, many.toString(), "--crosscheck", "no"));
    }
    System.out.println(records / JSON_SHARE + " records");
    figures.print(byFew, "");
    figures.print(byMany, "");
    figures.printRatio(byMany, byFew, "at most 5");
    Files.delete(file);
  }

  private void one() throws IOException, InterruptedException {
    Path program = program();
    String name = "one record, start to sheet, s";
    for (int i = 0; i < Math.max(rounds, 5); i++) {
      figures.add(name, screenOne(program));
    }
    figures.print(name, "under 0.80");
  }

  private void unpack(Path zip) throws IOException {
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        Path to = folder.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(to);
        } else {
          Files.createDirectories(to.getParent());
          Files.copy(in, to);
        }
      }
    }
  }

  private void heap() throws IOException, InterruptedException {
    double small = 0;
    double smallCross = 0;
    for (long many : new long[] {SMALL_HEAP_RECORDS, Math.max(records, 2 * SMALL_HEAP_RECORDS)}) {
      Path file = file("wells.csv", many);
      double none = liveHeap(file, "no");
      double cross = liveHeap(file, "yes");
      figures.add("live heap, MB, " + many + " records", none / 1e6);
      figures.print("live heap, MB, " + many + " records", "");
      if (small == 0) {
        small = none;
        smallCross = cross;
      } else {
        figures.add("live heap, larger / smaller file", none / small);
        figures.print("live heap, larger / smaller file", "at most 1.10");
        double each = (cross - smallCross) / Math.max(1, many - SMALL_HEAP_RECORDS);
        figures.add("cross-checks, bytes of heap a record", each);
        figures.print("cross-checks, bytes of heap a record", "at most 64");
      }
      Files.delete(file);
    }
  }

  private double liveHeap(Path file, String crosscheck) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(screening(file, PACK)));
    command.set(0, "org.wellcurb.bench.LiveHeap");
    command.addAll(List.of("--crosscheck", crosscheck));
    String heap = crosscheck.equals("no") ? "-Xmx192m" : "-Xmx1g";
    return Double.parseDouble(Timed.lastLine(List.of(heap), command.toArray(String[]::new)));
  }

  private static boolean hasPython() throws InterruptedException {
    try {
      return Timed.seconds(List.of("python3", "--version"), Map.of()) >= 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static long lines(Path file) throws IOException {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path path : walk.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
