package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Which cells of a column could not be read if its guess were used as it stands. */
final class Unread {
  /** Texts that are named. */
  private static final int SHOWN = 4;

  /** Columns in which a word stands that is likely to mean unknown everywhere. */
  private static final int SEVERAL = 3;

  private static final int LONGEST_WORD = 20;

  private final CellReader reader;
  private final RecordFiller scratch;

  Unread(Catalogue catalogue) {
    reader = new CellReader(catalogue);
    scratch = new RecordFiller(catalogue);
  }

  /**
   * Words that stand in several columns of figures and dates and say none: what the office writes
   * where nothing is known, most likely.
   */
  List<String> common(List<ColumnGuess> guesses) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    @Nullable Comma drafted = HeaderSurvey.drafted(guesses);
    for (ColumnGuess guess : guesses) {
      @Nullable Entry entry = guess.entry();
      if (entry == null || !isOfFigures(entry)) {
        continue;
      }
      for (String text : guess.survey().texts().keySet()) {
        boolean isWord =
            text.length() <= LONGEST_WORD && text.chars().noneMatch(c -> c >= '0' && c <= '9');
        if (isWord && isUnread(entry, text, guess, style(guess, drafted))) {
          columns.merge(text, 1, Integer::sum);
        }
      }
    }
    return columns.entrySet().stream()
        .filter(word -> word.getValue() >= SEVERAL)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The guesses; those of amounts and dates say what could not be read, but for these words. */
  List<ColumnGuess> said(List<ColumnGuess> guesses, List<String> except) {
    List<ColumnGuess> all = new ArrayList<>();
    @Nullable Comma drafted = HeaderSurvey.drafted(guesses);
    guesses.forEach(guess -> all.add(said(guess, except, drafted)));
    return all;
  }

  private static boolean isOfFigures(Entry entry) {
    return entry.kind().isAmount() || entry.kind() == Kind.DATE;
  }

  /** True if a text is read as a choice of this entry, or as yes or no. */
  boolean reads(Entry entry, String text) {
    return state(entry, text, null, TableMap.STYLE) != WellRecord.UNREADABLE;
  }

  private byte state(Entry entry, String text, @Nullable Unit unit, CellStyle style) {
    scratch.clear("", 0);
    reader.read(scratch, entry.index(), text, unit, UnitSystem.US, style);
    return scratch.record().state(entry.index());
  }

  /** True if nothing is made of a text, or it is not sure what it means. */
  private boolean isUnread(Entry entry, String text, ColumnGuess guess, CellStyle style) {
    byte state = state(entry, text, guess.unit(), style);
    return state == WellRecord.UNREADABLE
        || (state == WellRecord.UNKNOWN && scratch.record().note(entry.index()).isUnsure());
  }

  private ColumnGuess said(ColumnGuess guess, List<String> except, @Nullable Comma drafted) {
    @Nullable Entry entry = guess.entry();
    boolean alone =
        guess.joined().isEmpty() && guess.written().unitFrom().isEmpty() && guess.bottom() == null;
    if (entry == null || !alone || !isOfFigures(entry)) {
      return guess;
    }
    CellStyle style = style(guess, drafted);
    long cells = 0;
    List<String> shown = new ArrayList<>();
    for (Map.Entry<String, Integer> text : guess.survey().mostCommon()) {
      boolean known =
          guess.written().unknown().contains(text.getKey()) || except.contains(text.getKey());
      if (!known && isUnread(entry, text.getKey(), guess, style)) {
        cells += text.getValue();
        if (shown.size() < SHOWN) {
          shown.add("'" + text.getKey() + "'");
        }
      }
    }
    if (cells == 0) {
      return guess;
    }
    String many = cells == 1 ? "1 cell is" : cells + " cells are";
    return guess.withDoubt(
        many
            + " not read as it stands: "
            + String.join(", ", shown)
            + (cells > shown.size() ? " ..." : ""));
  }

  /** How the draft has it read. */
  private static CellStyle style(ColumnGuess guess, @Nullable Comma drafted) {
    Comma comma = drafted == null ? guess.survey().comma() : drafted;
    DateOrder order =
        switch (guess.written().dates()) {
          case "day first" -> DateOrder.DAY_FIRST;
          case "month first" -> DateOrder.MONTH_FIRST;
          default -> DateOrder.ISO_ONLY;
        };
    CellStyle style = TableMap.STYLE.withComma(comma).withDateOrder(order);
    int pivot = guess.written().pivot();
    style = pivot > 0 ? style.withPivotYear(pivot) : style;
    return guess.written().areDayNumbers() ? style.withDayNumbers(DayNumbers.FROM_1900) : style;
  }
}
