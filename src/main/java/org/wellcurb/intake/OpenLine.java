package org.wellcurb.intake;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * The line of a draft for a column of which no entry was found: all is there but the entry, for
 * which {@code ?} stands. Until somebody puts one there the column is kept and not read.
 */
final class OpenLine {
  /** What stands for an entry that somebody has yet to name. */
  static final String OPEN = "?";

  /** Codes that are laid out, and letters of the longest. */
  private static final int MOST_CODES = 12;

  private static final int CODE = 3;

  private OpenLine() {}

  /**
   * The line.
   *
   * @param place the place of the column; null where its name is enough
   */
  static ObjectNode of(ColumnGuess guess, @Nullable Integer place) {
    ColumnSurvey survey = guess.survey();
    ObjectNode line = JsonNodeFactory.instance.objectNode();
    if (place == null) {
      line.put("column", survey.name());
    } else {
      line.put("column", place);
    }
    line.put("entry", OPEN);
    Unit unit = HeaderWords.of(survey.name()).unit();
    if (survey.areDayNumbers()) {
      line.put("dayNumbers", "from 1900");
    } else if (survey.dated() >= 0.5) {
      String order = survey.dateOrder();
      if (!order.isEmpty()) {
        line.put("dates", order);
      }
    } else if (unit != null && survey.numeric() >= 0.5) {
      line.put("unit", unit.symbol());
    } else if (areCodes(survey)) {
      ObjectNode words = line.putObject("words");
      // Capitals make no difference in a map: one line for all ways to write a code.
      Set<String> folded = new HashSet<>();
      for (String code : survey.texts().keySet()) {
        if (folded.add(code.toLowerCase(Locale.ROOT))) {
          words.put(code, OPEN);
        }
      }
    }
    String open =
        guess.doubts().isEmpty() ? "" : " Look: " + String.join("; ", guess.doubts()) + ".";
    line.put("$comment", "Such as " + String.join(" | ", survey.samples()) + "." + open);
    return line;
  }

  /** True for a few short texts that are no figures, and not just yes and no. */
  private static boolean areCodes(ColumnSurvey survey) {
    Map<String, Integer> texts = survey.texts();
    return texts.size() > 1
        && texts.size() <= MOST_CODES
        && survey.numeric() < 0.5
        && texts.keySet().stream().allMatch(text -> text.length() <= CODE)
        && !texts.keySet().stream().allMatch(text -> text.matches("(?i)[yntf]|yes|no"));
  }
}
