package org.wellcurb.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.intake.ColumnGuess;
import org.wellcurb.intake.ColumnSurvey;
import org.wellcurb.intake.HeaderSurvey;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/** A survey of an export, in lines for a terminal. */
final class HeadersText {
  private static final int SAMPLE_LETTERS = 24;

  private HeadersText() {}

  static List<String> lines(HeaderSurvey survey) {
    List<String> lines = new ArrayList<>();
    lines.add(
        survey.file()
            + ": "
            + survey.layout().label()
            + "; header on line "
            + survey.layout().headerLine()
            + "; "
            + survey.rows()
            + " rows, "
            + survey.columns().size()
            + " columns, "
            + survey.known()
            + " of them guessed");
    survey.notes().forEach(note -> lines.add("  " + note));
    if (!survey.forUnknown().isEmpty()) {
      lines.add("  in many columns, and means unknown? " + String.join(", ", survey.forUnknown()));
    }
    List<ColumnSurvey> commas = survey.withDecimalCommas();
    if (!commas.isEmpty()) {
      ColumnSurvey first = commas.get(0);
      lines.add(
          "  decimal commas in "
              + commas.size()
              + (commas.size() == 1 ? " column, " : " columns, such as ")
              + first.name()
              + " ("
              + first.decimalComma()
              + ")");
    }
    if (survey.columns().size() > Bounds.COLUMNS) {
      lines.add(
          "  screen reads at most "
              + Bounds.COLUMNS
              + " columns: leave some out of the export, or split it");
    }
    List<String> blank = new ArrayList<>();
    for (int i = 0; i < survey.columns().size(); i++) {
      ColumnGuess guess = survey.columns().get(i);
      if (guess.entry() == null && guess.survey().filled() == 0) {
        blank.add(guess.survey().name());
      } else {
        column(i + 1, guess, lines);
      }
    }
    if (!blank.isEmpty()) {
      lines.add("  blank throughout and like no entry: " + String.join(", ", blank));
    }
    boolean hasId =
        survey.columns().stream()
            .anyMatch(
                column -> {
                  Entry entry = column.entry();
                  return entry != null && entry.index() == 0;
                });
    if (!hasId) {
      lines.add("  no column looks like the number of the record: a map must name one");
    }
    return lines;
  }

  private static void column(int place, ColumnGuess guess, List<String> lines) {
    ColumnSurvey survey = guess.survey();
    StringBuilder line = new StringBuilder();
    line.append(String.format(Locale.ROOT, "%4d ", place)).append(survey.name()).append(": ");
    line.append(survey.filled()).append(" filled");
    if (survey.filled() > 0) {
      line.append(", such as ").append(samples(survey));
    }
    if (!Double.isNaN(survey.least())) {
      line.append("; ").append(number(survey.least())).append(" to ").append(number(survey.most()));
      if (survey.textNumbers() > 0) {
        line.append(" but for ").append(survey.textNumbers()).append(" with a unit or more");
      }
    }
    lines.add(line.toString());
    Entry entry = guess.entry();
    if (entry == null) {
      String what = guess.role() == ColumnGuess.Role.ENTRY ? "not guessed: " : "";
      lines.add("       -> " + what + guess.why());
      guess.toLookAt().stream()
          .filter(doubt -> !doubt.equals(guess.why()))
          .forEach(doubt -> lines.add("       look: " + doubt));
      return;
    }
    Unit unit = guess.unit();
    lines.add(
        "       -> "
            + entry.key()
            + (guess.bottom() == null ? "" : " and " + guess.bottom().key())
            + (unit == null ? "" : " [" + unit.symbol() + "]")
            + (guess.joined().isEmpty()
                ? ""
                : " with " + String.join(", ", guess.joined()) + " (" + guess.join() + ")")
            + (guess.written().dates().isEmpty() ? "" : ", " + guess.written().dates())
            + (guess.written().areDayNumbers() ? ", day numbers from 1900" : "")
            + ": "
            + guess.why());
    if (!guess.written().unknown().isEmpty()) {
      lines.add("       means unknown? " + String.join(", ", guess.written().unknown()));
    }
    guess
        .written()
        .words()
        .forEach((written, choice) -> lines.add("       '" + written + "' = " + choice + "?"));
    for (String doubt : guess.toLookAt()) {
      lines.add("       look: " + doubt);
    }
  }

  private static String samples(ColumnSurvey survey) {
    List<String> cut = new ArrayList<>();
    for (String text : survey.samples()) {
      String line = text.replaceAll("\\s+", " ");
      cut.add(line.length() > SAMPLE_LETTERS ? line.substring(0, SAMPLE_LETTERS) + "..." : line);
    }
    return String.join(" | ", cut);
  }

  private static String number(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? String.valueOf((long) number)
        : String.valueOf((float) number);
  }
}
