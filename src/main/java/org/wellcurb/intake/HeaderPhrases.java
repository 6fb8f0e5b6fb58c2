package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * What offices call an entry, in words of the trade: from {@code header-phrases.csv}, and the
 * entry's own key.
 */
final class HeaderPhrases {
  private final Map<Entry, List<HeaderWords>> phrases = new LinkedHashMap<>();

  /** All words of phrases: one of them is no slip of another, as chloride is none of chlorine. */
  private final Set<String> known = new HashSet<>();

  /** What words of headers may be slips of: the same words stand in many columns. */
  private final Map<String, Set<String>> slips = new HashMap<>();

  HeaderPhrases(Catalogue catalogue) {
    for (Entry entry : catalogue.entries()) {
      List<HeaderWords> own = new ArrayList<>();
      own.add(HeaderWords.of(entry.key().replace('.', ' ')));
      phrases.put(entry, own);
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in =
        Objects.requireNonNull(HeaderPhrases.class.getResourceAsStream("header-phrases.csv"))) {
      for (CSVRecord line : format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        Entry entry = catalogue.entry(catalogue.index(line.get("entry")));
        for (String phrase : line.get("phrases").split("\\|", -1)) {
          List<HeaderWords> all = phrases.get(entry);
          if (all != null) {
            all.add(HeaderWords.of(phrase));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    phrases.values().forEach(all -> all.forEach(phrase -> known.addAll(phrase.words())));
  }

  /**
   * How much a header is like what this entry is called.
   *
   * @param entry one of the catalogue
   * @param least the likeness that is enough
   */
  HeaderWords.Likeness likeness(Entry entry, HeaderWords header, double least) {
    HeaderWords.Likeness most = HeaderWords.Likeness.NONE;
    for (HeaderWords phrase : phrases.getOrDefault(entry, List.of())) {
      // CHLORINE HOURS is a time, CHLORINE none; PUMP HP is a power.
      boolean isOfUnit = phrase.unit() == null || header.unit() != null;
      most = isOfUnit ? most.or(header.likeness(phrase.words(), this::slips), least) : most;
    }
    return most;
  }

  private Set<String> slips(String word) {
    return slips.computeIfAbsent(
        word,
        written ->
            known.contains(written)
                ? Set.of()
                : known.stream()
                    .filter(meant -> HeaderWords.isSlip(meant, written))
                    .collect(Collectors.toSet()));
  }
}
