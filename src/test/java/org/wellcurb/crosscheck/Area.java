package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * An invented region from a seed: wells over a smooth ground, drilled by contractors who each round
 * in their own way and work mostly around their yard, some of them in streets of wells that are
 * alike; two thirds of the positions section centres, figures heaped on fives and rod lengths as
 * real ones are. Faults can be planted, and are remembered.
 */
final class Area {
  private static final int CONTRACTORS = 60;
  private static final int RULES = 24;

  /** By how much contractors differ on a rule for honest reasons, in logarithms. */
  private static final double HONESTLY = 0.3;

  private static final int MOST_NAMES = 1000;
  private static final int ZONES = 8;
  private static final double SIZE = 0.9;
  private static final double YARD = 0.05;
  private static final double SECTION = 0.0145;
  private static final String[] YIELDS = {
    "1", "2", "3", "4", "5", "6", "7.5", "8", "10", "12", "15", "20", "25", "30", "40", "50"
  };

  /** What stands on a form. */
  enum Form {
    /** One date, ten measured entries. */
    FULL,

    /** Five dates, five measured entries, a sample of the water. */
    DATED
  }

  private static final String[] DATES = {
    "dates.permit", "dates.started", "dates.completed", "dates.sampled", "dates.received"
  };

  /** What was changed in each near copy. */
  final Map<Long, String> changes = new HashMap<>();

  /** Pairs of places of near copies, the earlier in the upper half. */
  final Set<Long> copies = new HashSet<>();

  /** Licences whose figures were made up, and how. */
  final Map<String, String> copyists = new TreeMap<>();

  /** Licences who write metres in a column of feet. */
  final Set<String> slippers = new HashSet<>();

  private final List<Map<String, String>> records = new ArrayList<>();
  private final Form form;
  private final Random random;
  private final double[][] yards = new double[CONTRACTORS][2];
  private int street;
  private int contractor;
  private int zone;
  private double x;
  private double y;

  Area(long seed, int wells) {
    this(seed, wells, Form.FULL);
  }

  Area(long seed, int wells, Form form) {
    this.form = form;
    random = new Random(seed);
    double[] tilt = {random.nextDouble(), random.nextDouble(), 2 + 3 * random.nextDouble()};
    for (int i = 0; i < CONTRACTORS; i++) {
      int home = i % ZONES;
      yards[i][0] = (home % 4 + 0.15 + 0.7 * random.nextDouble()) * SIZE / 4;
      yards[i][1] = (home / 4 + 0.15 + 0.7 * random.nextDouble()) * SIZE / 2;
    }
    for (int i = 0; i < wells; i++) {
      records.add(well(i, tilt));
    }
  }

  private Map<String, String> well(int number, double[] tilt) {
    boolean isNext = street > 0;
    street = isNext ? street - 1 : random.nextInt(30) == 0 ? 2 + random.nextInt(5) : 0;
    if (!isNext) {
      site(street > 0);
    }
    double like = isNext || street > 0 ? 0.2 : 1;
    double noise = like * random.nextGaussian();
    double ground = 220 + 120 * Math.sin(tilt[2] * x + tilt[0] * 6) * Math.cos(4 * y + tilt[1]);
    double depth = round(ground * Math.exp(0.1 * noise), contractor);
    double level =
        round(ground * 0.25 * Math.exp(0.25 * like * random.nextGaussian()), contractor + 1);
    double drawdown = round(20 + 60 * random.nextDouble(), contractor + 2);
    double casing = round(40 + 40 * random.nextDouble(), 3);
    String yield = YIELDS[Math.min(YIELDS.length - 1, (int) (8 + 3 * random.nextGaussian()) & 15)];
    Map<String, String> record = new LinkedHashMap<>();
    record.put("record.id", "W-" + number);
    record.put("record.datum", "ground");
    record.put("site.zone", "zone " + zone);
    record.put("driller.licence", "D-" + contractor);
    record.put("dates.completed", day());
    record.put("site.latitude", text(44 + y, 5));
    record.put("site.longitude", text(-76 + x, 5));
    if (random.nextBoolean()) {
      record.put("site.elevation", text(900 - 0.2 * ground, 0));
    }
    record.put("well.depth", text(depth, 1));
    record.put("well.drilled_depth", text(depth + random.nextInt(3), 1));
    record.put("well.casing_depth", text(casing, 1));
    record.put("well.casing_diameter", "6");
    record.put("well.casing_material", "steel");
    record.put("well.use", random.nextInt(9) == 0 ? "irrigation" : "household");
    record.put("grout.bottom", text(Math.min(casing, round(20 + 20 * random.nextDouble(), 1)), 1));
    record.put("water.static_level", text(level, 1));
    record.put("water.pumping_level", text(level + drawdown, 1));
    record.put("water.yield", yield);
    record.put("water.test_rate", yield);
    record.put("water.test_duration", "" + (1 + random.nextInt(4)));
    record.put("pump.intake_depth", text(depth - 10 - random.nextInt(20), 1));
    record.put("pressure.cut_in", random.nextBoolean() ? "30" : "40");
    if (form == Form.DATED) {
      dated(record);
    }
    return record;
  }

  /** Takes off what few forms ask for, and adds what went before and after the drilling. */
  private void dated(Map<String, String> record) {
    record
        .keySet()
        .removeAll(
            List.of(
                "well.drilled_depth",
                "water.pumping_level",
                "water.test_rate",
                "water.test_duration",
                "pump.intake_depth",
                "pressure.cut_in"));
    LocalDate completed = LocalDate.parse(record.getOrDefault("dates.completed", ""));
    LocalDate started = completed.minusDays(1 + random.nextInt(4));
    LocalDate sampled = completed.plusDays(5 + random.nextInt(11));
    record.put("dates.permit", "" + started.minusDays(5 + random.nextInt(55)));
    record.put("dates.started", "" + started);
    record.put("dates.sampled", "" + sampled);
    record.put("dates.received", "" + sampled.plusDays(2 + random.nextInt(8)));
    record.put("sample.coliform", random.nextInt(30) == 0 ? "present" : "absent");
    record.put("sample.nitrate", text(Math.exp(0.4 + 0.9 * random.nextGaussian()), 1) + " mg/L");
    record.put("grout.material", random.nextBoolean() ? "neat cement" : "bentonite slurry");
  }

  /** Goes to the next site: a few contractors drill most wells, mostly around their yards. */
  private void site(boolean isStreet) {
    contractor = (int) (CONTRACTORS * Math.pow(random.nextDouble(), 1.6));
    zone = contractor % ZONES;
    if (random.nextInt(5) == 0) {
      zone = random.nextInt(ZONES);
      x = (zone % 4 + random.nextDouble()) * SIZE / 4;
      y = (zone / 4 + random.nextDouble()) * SIZE / 2;
    } else {
      double[] yard = yards[contractor];
      x = within(yard[0] + YARD * random.nextGaussian(), zone % 4 * SIZE / 4, SIZE / 4);
      y = within(yard[1] + YARD * random.nextGaussian(), zone / 4 * SIZE / 2, SIZE / 2);
    }
    if (isStreet || random.nextDouble() < 0.62) {
      x = (Math.floor(x / SECTION) + 0.5) * SECTION;
      y = (Math.floor(y / SECTION) + 0.5) * SECTION;
    }
  }

  private static double within(double at, double from, double size) {
    return Math.min(from + size * 0.999, Math.max(from, at));
  }

  private String day() {
    return String.format(
        Locale.ROOT,
        "%d-%02d-%02d",
        2000 + random.nextInt(24),
        1 + random.nextInt(12),
        1 + random.nextInt(28));
  }

  /** As contractors round: most to fives, some to rod lengths, a few to the foot. */
  private double round(double figure, int habit) {
    double step =
        switch (habit % 7) {
          case 0 -> 1;
          case 1 -> 20;
          case 2 -> 21;
          default -> random.nextInt(4) == 0 ? 10 : 5;
        };
    return Math.max(step, Math.rint(figure / step) * step);
  }

  private static String text(double number, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", number);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /**
   * Copies forms: another number, and another day, another day and depth, or another place, day and
   * installer.
   */
  Area plantCopies(int count) {
    int wells = records.size();
    for (int i = 0; i < count; i++) {
      int from = random.nextInt(wells);
      Map<String, String> copy = new LinkedHashMap<>(records.get(from));
      copy.put("record.id", "C-" + i);
      long pair = ((long) from << 32) | records.size();
      changes.put(pair, form == Form.FULL ? changed(copy, i) : changedDated(copy));
      copies.add(pair);
      records.add(copy);
    }
    return this;
  }

  private String changed(Map<String, String> copy, int i) {
    switch (random.nextInt(3)) {
      case 0 -> {
        copy.put("dates.completed", day());
        return "another day";
      }
      case 1 -> {
        copy.put("site.latitude", text(44 + SIZE * random.nextDouble(), 5));
        copy.put("site.longitude", text(-76 + SIZE * random.nextDouble(), 5));
        copy.put("dates.completed", "1999-0" + (1 + i % 9) + "-11");
        copy.put("installer.licence", "P-" + i);
        return "another place, day and installer";
      }
      default -> {
        copy.put("dates.completed", day());
        copy.put("well.depth", text(100 + random.nextInt(300), 0));
        return "another day and depth";
      }
    }
  }

  private String changedDated(Map<String, String> copy) {
    int what = random.nextInt(5);
    int shift = 10 + random.nextInt(290);
    for (String date : DATES) {
      int days = what == 1 ? 10 + random.nextInt(290) : shift;
      copy.computeIfPresent(
          date, (key, day) -> what == 4 ? day : "" + LocalDate.parse(day).plusDays(days));
    }
    switch (what) {
      case 0 -> {
        return "five dates, all by as many days";
      }
      case 1 -> {
        return "five dates, each by itself";
      }
      case 2 -> {
        copy.put("well.depth", text(100 + random.nextInt(300), 0));
        return "five dates, all by as many days, and depth";
      }
      case 3 -> {
        double north = Double.parseDouble(copy.getOrDefault("site.latitude", "44"));
        double east = Double.parseDouble(copy.getOrDefault("site.longitude", "-76"));
        copy.put("site.latitude", text(north + 0.04 * (random.nextDouble() - 0.5), 5));
        copy.put("site.longitude", text(east + 0.04 * (random.nextDouble() - 0.5), 5));
        return "five dates, all by as many days, and place";
      }
      default -> {
        copy.put("water.yield", "" + (31 + random.nextInt(60)));
        return "yield alone";
      }
    }
  }

  /** So many contractors write one level on a share of their forms. */
  Area plantCopying(int contractors, double share) {
    for (int i = 0; i < contractors; i++) {
      String level = "" + (23 + random.nextInt(60));
      plant(
          "one level",
          "water.static_level",
          (old, at) -> random.nextDouble() < share ? level : old);
    }
    return this;
  }

  /** So many contractors each round depths to fifty, make up sevens, and write levels in rows. */
  Area plantHabits(int contractors) {
    for (int i = 0; i < contractors; i++) {
      plant(
          "rounding",
          "well.depth",
          (old, at) -> text(Math.max(50, 50 * Math.rint(Double.parseDouble(old) / 50)), 0));
      plant(
          "last digit",
          "water.static_level",
          (old, at) ->
              random.nextInt(2) == 0
                  ? text(10 * Math.floor(Double.parseDouble(old) / 10) + 7, 0)
                  : old);
      plant(
          "rows", "water.static_level", (old, at) -> at / 12 % 2 == 0 ? "" + (31 + at / 12) : old);
    }
    return this;
  }

  /** What a contractor writes in place of a figure on its form of that number. */
  private interface Habit {
    String written(String figure, int at);
  }

  private void plant(String what, String entry, Habit habit) {
    List<String> able = contractors(200);
    if (able.isEmpty()) {
      return;
    }
    String licence = able.get(random.nextInt(able.size()));
    copyists.put(licence, what);
    int at = 0;
    for (Map<String, String> record : records) {
      if (licence.equals(record.get("driller.licence"))) {
        record.put(entry, habit.written(record.getOrDefault(entry, "1"), at++));
      }
    }
  }

  /** So many contractors write metres in the column of feet. */
  Area plantSlips(int contractors) {
    List<String> able = contractors(25);
    for (int i = 0; i < contractors && !able.isEmpty(); i++) {
      String licence = able.remove(random.nextInt(able.size()));
      slippers.add(licence);
      for (Map<String, String> record : records) {
        if (licence.equals(record.get("driller.licence"))) {
          double feet = Double.parseDouble(record.getOrDefault("well.depth", "0"));
          record.put("well.depth", text(feet * 0.3048, 1));
        }
      }
    }
    return this;
  }

  /** Licences with at least so many records that nothing was planted on. */
  private List<String> contractors(int least) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Map<String, String> record : records) {
      counts.merge(record.getOrDefault("driller.licence", ""), 1, Integer::sum);
    }
    List<String> able = new ArrayList<>();
    counts.forEach(
        (licence, count) -> {
          if (count >= least && !copyists.containsKey(licence) && !slippers.contains(licence)) {
            able.add(licence);
          }
        });
    return able;
  }

  int size() {
    return records.size();
  }

  /** Changes each form. */
  Area each(Consumer<Map<String, String>> change) {
    records.forEach(change);
    return this;
  }

  /** Adds a record as it is done when records are screened. */
  static void add(
      SurveyPart part,
      WellRecord record,
      boolean isDeficient,
      boolean isTold,
      int pack,
      byte[] told) {
    int[] hashes = new int[Catalogue.standard().size()];
    RecordMark.hashes(record, hashes);
    String driller = given(record, "driller.licence");
    String zone = given(record, "site.zone");
    part.add(record, hashes, isDeficient, isTold, pack, told, driller, zone);
  }

  private static String given(WellRecord record, String key) {
    int entry = record.catalogue().index(key);
    return record.isGiven(entry) ? record.written(entry) : "";
  }

  /** Rules that some records fall short of, each contractor a little more or less often. */
  private static RuleSet rules() {
    List<String> ids = new ArrayList<>();
    for (int r = 0; r < RULES; r++) {
      ids.add("rule-" + r);
    }
    return new RuleSet(
        List.of(
            new RuleSet.RulesOfPack(
                "region",
                ids,
                ids,
                java.util.Collections.nCopies(RULES, true),
                java.util.Collections.nCopies(RULES, false))));
  }

  private byte[] told(String licence, Map<String, double[]> rates) {
    double[] own =
        rates.computeIfAbsent(
            licence,
            name -> {
              double[] rate = new double[RULES];
              for (int r = 0; r < RULES; r++) {
                rate[r] = 0.005 * (1 + r % 6) * Math.exp(HONESTLY * random.nextGaussian());
              }
              return rate;
            });
    byte[] told = new byte[RULES];
    for (int r = 0; r < RULES; r++) {
      boolean isShort = random.nextDouble() < own[r];
      told[r] =
          (byte) (random.nextInt(4) == 0 ? Told.NOT : isShort ? Told.FALLS_SHORT : Told.MEETS);
    }
    return told;
  }

  /** Looks at the region. */
  CrossResult check(Path folder) throws IOException {
    return check(folder, Columns.MOST_IN_HEAP, 1);
  }

  /**
   * The same.
   *
   * @param mostInHeap numbers of a column that is in the heap
   */
  CrossResult check(Path folder, int mostInHeap, int threads) throws IOException {
    Path file = folder.resolve("survey");
    Catalogue catalogue = Catalogue.standard();
    SurveyPart part = new SurveyPart(catalogue, RULES);
    Map<String, double[]> rates = new TreeMap<>();
    Columns columns = new Columns(folder, mostInHeap);
    try (SurveyFile survey = new SurveyFile(file, catalogue, rules(), MOST_NAMES, columns)) {
      for (int i = 0; i < records.size(); i++) {
        Map<String, String> record = records.get(i);
        byte[] told = told(record.getOrDefault("driller.licence", ""), rates);
        boolean isDeficient = false;
        for (byte each : told) {
          isDeficient |= each == Told.FALLS_SHORT;
        }
        add(part, RecordReader.of(record), isDeficient, true, 0, told);
        if (i % 500 == 499 || i == records.size() - 1) {
          survey.append(part, "region.csv");
          part.clear();
        }
      }
      return new CrossCheck(survey, catalogue, 100_000).run(threads);
    } finally {
      Files.deleteIfExists(file);
    }
  }
}
