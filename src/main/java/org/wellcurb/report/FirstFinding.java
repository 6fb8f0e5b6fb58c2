package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.words.Words;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;

/**
 * The finding of a record that a list names: the gravest, in a sentence, and where it is written.
 */
public final class FirstFinding {
  private final Words words;
  private final FindingSentence sentence;

  public FirstFinding(PageStyle style) {
    words = Words.in(style.language());
    sentence = new FindingSentence(style);
  }

  /** The text; empty where there is no finding. */
  public String of(List<Finding> findings) {
    @Nullable Finding first = null;
    for (Finding finding : findings) {
      if (first == null || Harm.GRAVEST_FIRST.compare(finding.rule(), first.rule()) < 0) {
        first = finding;
      }
    }
    return first == null
        ? ""
        : sentence.of(first) + " (" + SourceLine.of(first.source(), words).text() + ")";
  }
}
