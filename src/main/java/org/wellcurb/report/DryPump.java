package org.wellcurb.report;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Unit;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Words;
import org.wellcurb.workings.WorkingCatalogue;

/**
 * An intake above the water, in the words of those who set pumps: a submergence below nothing tells
 * them little.
 */
final class DryPump {
  /** Workings that say how much water is over the intake. */
  private static final List<String> WATER_OVER =
      List.of("pump_submergence", "submergence_at_rated_flow");

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
    return !working(deciding).isEmpty();
  }

  /** What it means, a whole sentence; empty where this is about something else. */
  String sentence(Deciding deciding) {
    String working = working(deciding);
    @Nullable Unit unit = deciding.unit();
    return working.isEmpty() || unit == null
        ? ""
        : words.say("dry." + working, amounts.tidy(-deciding.value(), unit));
  }

  private String working(Deciding deciding) {
    if (deciding.unit() != null && deciding.value() < 0 && deciding.valueText().isEmpty()) {
      for (String name : WATER_OVER) {
        String label =
            style
                .speech()
                .label(Objects.requireNonNull(WorkingCatalogue.standard().find(name)));
        if (deciding.subject().equals(label)) {
          return name;
        }
      }
    }
    return "";
  }
}
