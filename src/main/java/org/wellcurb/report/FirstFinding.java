package org.wellcurb.report;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;

/**
 * The finding of a record that a list names: the gravest, in a sentence, and where it is written.
 */
public final class FirstFinding {
  /** What cannot wait stands before the gravest kind. */
  private static final Comparator<Rule> SOONEST_FIRST =
      Comparator.<Rule>comparingInt(rule -> Harm.of(rule).isNow() ? 0 : 1)
          .thenComparing(Harm.GRAVEST_FIRST);

  private final PageStyle style;
  private final Words words;
  private final FindingSentence sentence;

  public FirstFinding(PageStyle style) {
    this.style = style;
    words = Words.in(style.language());
    sentence = new FindingSentence(style);
  }

  /** What must be done about the water, by all that the sample shows. */
  public String ofWater(WellRecord record) {
    return words.say(new Urgent(record).key());
  }

  /** The text; empty where there is no finding. */
  public String of(List<Finding> findings) {
    @Nullable Finding first = null;
    for (Finding finding : findings) {
      if (first == null || SOONEST_FIRST.compare(finding.rule(), first.rule()) < 0) {
        first = finding;
      }
    }
    if (first == null) {
      return "";
    }
    String text = sentence.of(first) + " (" + SourceLine.of(first.source(), words).text() + ")";
    String atOnce = first.rule().atOnce();
    return atOnce.isEmpty() ? text : style.own(atOnce) + " " + text;
  }
}
