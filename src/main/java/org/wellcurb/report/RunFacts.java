package org.wellcurb.report;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.rulepack.Pack;

/**
 * What {@code run.json} says of a run: enough to make the same report again, and to see that no row
 * was lost. Never times, folders or workers.
 *
 * @param version version of the program
 * @param asOf as-of date
 * @param options options that change what is written, by name without dashes, in order
 * @param inputs how each input was read, in the order read
 * @param notRead files met and not read, with the reason, in order
 * @param packs the packs, in the order given
 * @param counts counts by name, in order
 * @param cuts where a cap cut
 */
public record RunFacts(
    String version,
    LocalDate asOf,
    Map<String, String> options,
    List<InputLine> inputs,
    Map<String, String> notRead,
    List<Pack> packs,
    Map<String, Long> counts,
    List<Cut> cuts) {

  public RunFacts {
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
    inputs = List.copyOf(inputs);
    notRead = Collections.unmodifiableMap(new LinkedHashMap<>(notRead));
    packs = List.copyOf(packs);
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    cuts = List.copyOf(cuts);
  }
}
