package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.judgement.NotThere;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Part;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;

/**
 * What to ask for: the entries named by outcomes that cannot be told. Those come first that would
 * settle limits of what may soon hurt someone, of these the sample; then where sewage is and how
 * the well ends at the top, then those that would settle most limits, then those that would settle
 * most. What stands on the form is not asked for again, nor what the form says that there is not,
 * nor what a form of the pump alone does not tell.
 */
final class Asks {
  private static final int NOT_SOON = Harm.SLOW.ordinal();

  private static final Set<String> SAMPLE =
      Set.of("sample.coliform", "sample.e_coli", "sample.nitrate");

  private static final Set<String> SEWAGE =
      Set.of("setback.septic_tank", "setback.absorption_field");

  private static final Set<String> WELL_HEAD =
      Set.of("well.head", "well.cap", "well.stickup", "well.flood_level");

  private static final List<String> OF_THE_SITE =
      List.of("setback.", "site.septic_", "site.sewer_", "site.soil", "site.slope");

  private final WellRecord record;
  private final Catalogue catalogue;

  private Asks(WellRecord record) {
    this.record = record;
    catalogue = record.catalogue();
  }

  static List<Ask> of(WellRecord record, List<RuleResult> results) {
    return new Asks(record).of(results);
  }

  private List<Ask> of(List<RuleResult> results) {
    Map<String, Integer> settles = new LinkedHashMap<>();
    Map<String, Integer> limits = new HashMap<>();
    Map<String, Integer> harms = new HashMap<>();
    for (RuleResult result : results) {
      if (result.outcome() == Outcome.CANNOT_TELL) {
        int isLimit = result.rule().kind() == FindingKind.DEFICIENCY ? 1 : 0;
        int harm = isLimit == 1 ? soon(Harm.of(result.rule())) : NOT_SOON;
        for (String key : result.explanation().needs()) {
          settles.merge(key, 1, Integer::sum);
          limits.merge(key, isLimit, Integer::sum);
          harms.merge(key, harm, Math::min);
        }
      }
    }
    List<Ask> asks = new ArrayList<>();
    settles.forEach(
        (key, count) -> {
          if (isOpen(key)) {
            asks.add(new Ask(key, count));
          }
        });
    // A stable sort: among equals the order in which rules name them.
    asks.sort(
        Comparator.comparingInt((Ask ask) -> harms.getOrDefault(ask.entry(), NOT_SOON))
            .thenComparingInt(ask -> turn(ask.entry()))
            .thenComparingInt(ask -> -limits.getOrDefault(ask.entry(), 0))
            .thenComparingInt(ask -> -ask.settles()));
    return asks;
  }

  /** What makes ill over the years can wait for what settles more. */
  private static int soon(Harm harm) {
    return harm.compareTo(Harm.SLOW) < 0 ? harm.ordinal() : NOT_SOON;
  }

  /** How soon it is asked for, by what harms first; common practice. */
  private static int turn(String key) {
    if (SAMPLE.contains(key)) {
      return 0;
    }
    if (SEWAGE.contains(key)) {
      return 1;
    }
    return WELL_HEAD.contains(key) ? 2 : 3;
  }

  /** Whether the answer is not on the form, and can be given on it. */
  private boolean isOpen(String key) {
    int entry = catalogue.index(key);
    Part part = catalogue.entry(entry).part();
    boolean isFilled = record.isGiven(entry) && record.isPoint(entry);
    boolean isElsewhere =
        (is("record.covers", "pump")
                && (part == Part.WELL || OF_THE_SITE.stream().anyMatch(key::startsWith)))
            || (is("record.covers", "well") && part == Part.PUMP);
    return !isFilled && !NotThere.has(key, record) && !isElsewhere;
  }

  private boolean is(String key, String choice) {
    return choice.equals(record.choice(catalogue.index(key)));
  }
}
