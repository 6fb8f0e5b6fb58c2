package org.wellcurb.report;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Unit;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/**
 * An intake above the water, in the words of those who set pumps: a submergence below nothing tells
 * them little.
 */
final class DryPump {
  /** Workings that say how much water is over the intake: at the tested level, at its own flow. */
  private static final String TESTED = "pump_submergence";

  private static final String RATED = "submergence_at_rated_flow";

  private final PageStyle style;
  private final Words words;
  private final Amounts amounts;

  DryPump(PageStyle style) {
    this.style = style;
    words = Words.in(style.language());
    amounts = new Amounts(words, style.units());
  }

  /** Whether this was compared, and the water is below the intake. */
  boolean isSaid(Deciding deciding) {
    return !sentence(deciding).isEmpty();
  }

  /** What it means, a whole sentence; empty where this is about something else. */
  String sentence(Deciding deciding) {
    @Nullable Unit unit = deciding.unit();
    if (unit == null || !(deciding.value() < 0) || !deciding.valueText().isEmpty()) {
      return "";
    }
    String by = amounts.tidy(-deciding.value(), unit);
    if (is(TESTED, deciding)) {
      return words.say("dry.tested", by);
    }
    return is(RATED, deciding) ? words.say("dry.rated", by) : "";
  }

  private boolean is(String working, Deciding deciding) {
    Working of = Objects.requireNonNull(WorkingCatalogue.standard().find(working));
    return deciding.subject().equals(style.speech().label(of));
  }
}
