package org.wellcurb.batch;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Files of invented records, good and spoiled, made from a seed. */
final class Region {
  private static final String HEADER =
      "record.id,record.jurisdiction,driller.licence,well.tag,setback.septic_tank [ft],"
          + "relief.fitted,relief.setting [psi],pressure.cut_out [psi],pressure.cut_in [psi],"
          + "tank.precharge [psi],water.static_level [ft],water.pumping_level [ft],"
          + "site.latitude,site.longitude,remarks\n";
  private static final int CELLS = HEADER.split(",").length;

  private final Random random;

  Region(long seed) {
    random = new Random(seed);
  }

  /** Writes so many rows: about one in twenty is no record, one in five has a finding or more. */
  Path write(Path file, int rows) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write(HEADER);
      for (int i = 0; i < rows; i++) {
        out.write(random.nextInt(20) == 0 ? spoiled(i) : row(i));
      }
    }
    return file;
  }

  private String row(int i) {
    int cutIn = 30 + 10 * random.nextInt(2);
    int level = 10 + random.nextInt(60);
    String[] cells = {
      "W-" + i,
      random.nextBoolean() ? "alder" : "birch",
      pick("D 1", "D 2", "\"D, 3\"", "=D4", ""),
      oneIn(20) ? "" : "T" + i,
      oneIn(20) ? "40" : pick("120", "31 m", ">100", "", "100-150", "n/a"),
      "yes",
      oneIn(20) ? "" + (cutIn + 20) : "75",
      "" + (cutIn + 20),
      "" + cutIn,
      oneIn(20) ? "" + (cutIn + 4) : "" + (cutIn - 2),
      "" + level,
      oneIn(20) ? "" + (level - 5) : "" + (level + 30),
      "44." + (1000 + random.nextInt(8999)),
      "-71." + (1000 + random.nextInt(8999)),
      pick("", "\"two\nlines\"", "\"quote \"\" here\"", "été", "<b>&amp;</b>", "-1+1")
    };
    return String.join(",", cells) + (oneIn(10) ? "\r\n" : "\n");
  }

  private String spoiled(int i) {
    return switch (random.nextInt(3)) {
      case 0 -> "W-" + i + ",alder,too few\n";
      case 1 -> ",alder" + ",".repeat(CELLS - 2) + "\n";
      default -> "W-" + i + ",\"al\"der" + ",".repeat(CELLS - 2) + "\n";
    };
  }

  private boolean oneIn(int n) {
    return random.nextInt(n) == 0;
  }

  private String pick(String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
