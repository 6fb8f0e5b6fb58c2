package org.wellcurb.cli;

import java.io.FileInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A process that takes all the file handles that it may have but a few, runs the program with
 * those, and says what came of it, for none free, one, two and so on. What the program's classes
 * need is loaded before.
 */
final class OutOfHandles {
  /** Free handles that are surely enough. */
  private static final int ENOUGH = 40;

  /** So many whole runs in a row are looked at. */
  private static final int WHOLE_RUNS = 3;

  private final Path dir;
  private final Deque<FileInputStream> taken = new ArrayDeque<>();

  private OutOfHandles(Path dir) {
    this.dir = dir;
  }

  /** The folder, which holds the inputs in {@code in}; prints a line for each number of handles. */
  public static void main(String[] arguments) throws IOException {
    new OutOfHandles(Path.of(arguments[0])).run();
  }

  private void run() throws IOException {
    loadWhatErrorsNeed();
    Ran first = screen();
    if (first.code() != 0) {
      throw new IllegalStateException(first.err());
    }
    Map<String, String> before = report();
    int whole = 0;
    for (int free = 0; free <= ENOUGH && whole < WHOLE_RUNS; free++) {
      take(free);
      Ran ran = screen();
      whole += ran.code() == 0 ? 1 : 0;
      release();
      String stands = before.equals(report()) ? "as it was" : "ANOTHER REPORT";
      String said = ran.err().strip().replace('\n', '|');
      System.out.println(free + " free, code " + ran.code() + ", " + stands + ": " + said);
    }
    System.out.println("left over: " + leftovers());
  }

  /** Classes lie in one jar that is open; those of a test, each in a file of its own. */
  private void loadWhatErrorsNeed() throws IOException {
    String in = dir.resolve("in").toString();
    String beneathAFile = Path.of(in, "a.csv", "out").toString();
    if (screen("nowhere.csv", beneathAFile).code() == 0 || screen(in, beneathAFile).code() == 0) {
      throw new IllegalStateException("these cannot be run");
    }
  }

  private Ran screen() {
    return screen(dir.resolve("in").toString(), dir.resolve("out").toString());
  }

  private static Ran screen(String in, String out) {
    return Ran.with(
        "screen",
        in,
        "--rules",
        "fenwick-county",
        "--as-of",
        "2026-01-01",
        "--workers",
        "2",
        "--outcomes",
        "--out",
        out);
  }

  private void take(int free) throws IOException {
    try {
      while (true) {
        taken.push(new FileInputStream("/dev/null"));
      }
    } catch (IOException e) {
      for (int i = 0; i < free; i++) {
        taken.pop().close();
      }
    }
  }

  private void release() throws IOException {
    for (FileInputStream handle : taken) {
      handle.close();
    }
    taken.clear();
  }

  private Map<String, String> report() throws IOException {
    Path out = dir.resolve("out");
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(out)) {
      for (Path path : walk.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(path, StandardCharsets.ISO_8859_1);
        files.put(out.relativize(path).toString(), text);
      }
    }
    return files;
  }

  private List<String> leftovers() throws IOException {
    List<String> names = new ArrayList<>();
    try (Stream<Path> list = Files.list(dir)) {
      list.map(path -> path.getFileName().toString())
          .filter(name -> !name.equals("in") && !name.equals("out"))
          .forEach(names::add);
    }
    return names;
  }
}
