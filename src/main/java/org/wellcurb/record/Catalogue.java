package org.wellcurb.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/** The list of all entries: the one source of keys, kinds, units, ranges and choices. */
public final class Catalogue {
  private static final Catalogue STANDARD = load();

  private final List<Entry> entries;
  private final Map<String, Entry> byKey = new HashMap<>();

  private Catalogue(List<Entry> entries) {
    this.entries = List.copyOf(entries);
    for (Entry entry : entries) {
      if (byKey.put(entry.key(), entry) != null) {
        throw new IllegalStateException("entries.csv: " + entry.key() + " stands twice");
      }
    }
  }

  /** The catalogue that ships. */
  public static Catalogue standard() {
    return STANDARD;
  }

  public int size() {
    return entries.size();
  }

  /** All entries, in the order of the form. */
  public List<Entry> entries() {
    return entries;
  }

  public Entry entry(int index) {
    return entries.get(index);
  }

  /** The entry with this key; null if there is none. */
  public @Nullable Entry find(String key) {
    return byKey.get(key);
  }

  /** The place of a key that must exist (for code that names entries). */
  public int index(String key) {
    return Objects.requireNonNull(byKey.get(key), () -> "no entry " + key).index();
  }

  /** The key nearest to this one by edit distance; null if none is within a third of its length. */
  public @Nullable String nearest(String key) {
    return Nearest.of(key, byKey.keySet());
  }

  private static Catalogue load() {
    try (InputStream in = Catalogue.class.getResourceAsStream("entries.csv")) {
      String text =
          new String(
              Objects.requireNonNull(in, "entries.csv").readAllBytes(), StandardCharsets.UTF_8);
      List<Entry> entries = new ArrayList<>();
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = CSVParser.parse(text, format)) {
        for (CSVRecord row : parser) {
          entries.add(entry(entries.size(), row));
        }
      }
      return new Catalogue(entries);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Entry entry(int index, CSVRecord row) {
    Kind kind = Kind.of(row.get("kind"));
    @Nullable Unit us = unit(kind, row.get("us_unit"));
    @Nullable Unit metric = unit(kind, row.get("metric_unit"));
    List<List<String>> choices = choices(row.get("choices"));
    return new Entry(
        index,
        row.get("key"),
        kind,
        us,
        metric,
        us == null
            ? Interval.ALL
            : plausible(us, row.get("plausible_low"), row.get("plausible_high")),
        choices.stream().map(words -> words.get(0)).toList(),
        choices.stream().map(words -> words.subList(1, words.size())).toList(),
        Part.valueOf(row.get("part").toUpperCase(java.util.Locale.ROOT)),
        Datum.of(row.get("from")),
        row.get("meaning"));
  }

  /** Choices parted by bars; behind each, after equals signs, its other spellings. */
  private static List<List<String>> choices(String cell) {
    return cell.isEmpty()
        ? List.of()
        : Arrays.stream(cell.split("\\|", -1)).map(c -> List.of(c.split("=", -1))).toList();
  }

  private static @Nullable Unit unit(Kind kind, String symbol) {
    if (!kind.isAmount() || kind == Kind.DATE) {
      return null;
    }
    return Units.named(symbol).orElseThrow();
  }

  /** The plausible range is stated in the US unit. */
  private static Interval plausible(Unit unit, String low, String high) {
    if (low.isEmpty() || high.isEmpty()) {
      return Interval.ALL;
    }
    return new Interval(unit.toSi(Double.parseDouble(low)), unit.toSi(Double.parseDouble(high)));
  }
}
