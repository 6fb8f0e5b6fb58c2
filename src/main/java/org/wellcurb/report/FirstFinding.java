package org.wellcurb.report;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;
import org.wellcurb.screening.UnfitWater;

/**
 * The finding of a record that a list names: the gravest, in a sentence, and where it is written.
 */
public final class FirstFinding {
  /** What cannot wait stands before the gravest kind. */
  private static final Comparator<Rule> SOONEST_FIRST =
      Comparator.<Rule>comparingInt(rule -> Harm.of(rule).isNow() ? 0 : 1)
          .thenComparing(Harm.GRAVEST_FIRST);

  private final Words words;
  private final FindingSentence sentence;

  public FirstFinding(PageStyle style) {
    words = Words.in(style.language());
    sentence = new FindingSentence(style);
  }

  /** What the sample says of the water, where no finding does. */
  public String ofWater(WellRecord record) {
    boolean isOfBacteria = new UnfitWater(record).hasBacteria();
    return words.say(isOfBacteria ? "caution.bacteria" : "caution.nitrate");
  }

  /** The text; empty where there is no finding. */
  public String of(List<Finding> findings) {
    @Nullable Finding first = null;
    for (Finding finding : findings) {
      if (first == null || SOONEST_FIRST.compare(finding.rule(), first.rule()) < 0) {
        first = finding;
      }
    }
    return first == null
        ? ""
        : sentence.of(first) + " (" + SourceLine.of(first.source(), words).text() + ")";
  }
}
