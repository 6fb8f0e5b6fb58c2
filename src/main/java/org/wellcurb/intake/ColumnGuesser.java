package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;

/** Guesses which entry each column fills, from its header and from what stands in it. */
final class ColumnGuesser {
  private final Catalogue catalogue;
  private final HeaderPhrases phrases;
  private final Unread unread;
  private final ChoiceWords choices;
  private List<String> forUnknown = List.of();

  ColumnGuesser(Catalogue catalogue) {
    this.catalogue = catalogue;
    phrases = new HeaderPhrases(catalogue);
    unread = new Unread(catalogue);
    choices = new ChoiceWords(unread);
  }

  /** Guesses of all columns; no entry is guessed twice. */
  List<ColumnGuess> guess(List<ColumnSurvey> columns) {
    List<HeaderWords> headers = columns.stream().map(column -> words(column)).toList();
    UnitSystem most = system(columns, headers);
    HeaderMatches matches = new HeaderMatches(columns, headers, catalogue, phrases, most);
    List<ColumnGuess> guesses = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      @Nullable ColumnMatch match = matches.of(i);
      ColumnGuess guess =
          match == null
              ? nothing(columns.get(i), matches.open(i))
              : described(columns.get(i), match, most);
      if (match != null && LoneLetters.mayBeNoLitres(columns.get(i).name(), match, most)) {
        guess =
            guess.leftOpen(
                "its header may mean "
                    + match.entry().key()
                    + ", but the L behind it may mean litres or be a letter of its name, and other"
                    + " columns are in US units: write the entry, and the unit that is meant");
      }
      boolean isNumber =
          match != null && match.entry().index() == 0 && !matches.ofNumber().isEmpty();
      guesses.add(isNumber ? guess.withDoubt(matches.ofNumber()) : guess);
    }
    List<ColumnGuess> all =
        Intervals.parted(
            catalogue, UnitColumns.beside(columns, PartColumns.joined(catalogue, guesses)));
    forUnknown = unread.common(all);
    List<ColumnGuess> said = new ArrayList<>(unread.said(all, forUnknown));
    for (int i : matches.leftOpen()) {
      said.set(
          i, said.get(i).entry() == null ? said.get(i) : said.get(i).leftOpen(matches.open(i)));
    }
    return said;
  }

  /** Words of the columns guessed last that seem to mean that nothing is known, in all of them. */
  List<String> forUnknown() {
    return forUnknown;
  }

  /** The words of its header; ON above dates means their day: {@code SAMPLED_ON}. */
  private static HeaderWords words(ColumnSurvey column) {
    HeaderWords header = HeaderWords.of(column.name());
    int last = header.words().size() - 1;
    boolean isOn =
        last > 0 && header.words().get(last).equals("on") && column.dated() >= CellsFit.OF_KIND;
    if (!isOn) {
      return header;
    }
    List<String> words = new ArrayList<>(header.words().subList(0, last));
    words.add("date");
    return new HeaderWords(words, header.unit());
  }

  /** The system of most units that headers name. */
  private static UnitSystem system(List<ColumnSurvey> columns, List<HeaderWords> headers) {
    int metric = 0;
    int us = 0;
    for (int i = 0; i < headers.size(); i++) {
      Unit unit = headers.get(i).unit();
      if (unit != null) {
        metric += unit.system() == UnitSystem.METRIC ? 1 : 0;
        us += unit.system() == UnitSystem.US ? 1 : 0;
      }
      for (Unit written : columns.get(i).units().keySet()) {
        metric += written.system() == UnitSystem.METRIC ? 1 : 0;
        us += written.system() == UnitSystem.US ? 1 : 0;
      }
    }
    return metric > us ? UnitSystem.METRIC : UnitSystem.US;
  }

  private static ColumnGuess nothing(ColumnSurvey column, String open) {
    if (!open.isEmpty()) {
      return new ColumnGuess(column, null, WrittenGuess.NONE, open, List.of(open));
    }
    String why =
        column.filled() == 0
            ? "it is blank throughout, and its header is like no entry"
            : "its header is like no entry of its kind" + seen(column);
    return new ColumnGuess(column, null, WrittenGuess.NONE, why, List.of());
  }

  /** What its header and its cells say of how it is written, whatever it is. */
  private static String seen(ColumnSurvey column) {
    Unit unit = HeaderWords.of(column.name()).unit();
    if (column.areDayNumbers()) {
      return "; its numbers may be days as a spreadsheet counts them";
    }
    if (column.dated() >= CellsFit.OF_KIND) {
      String order = column.dateOrder();
      return order.isEmpty() ? "; dates" : "; dates, " + order;
    }
    return unit == null || column.numeric() < CellsFit.OF_KIND
        ? ""
        : "; " + unit.symbol() + " by its header";
  }

  private ColumnGuess described(ColumnSurvey column, ColumnMatch match, UnitSystem most) {
    HeaderWords header = match.header();
    String why =
        match.likeness() >= 2
            ? "the header is its key"
            : match.likeness() == 0
                ? "the first column that is filled throughout and tells rows apart"
                : "the header says " + String.join(" ", header.words());
    return new GuessSettings(column, match.entry(), why).guess(header, most, choices);
  }
}
