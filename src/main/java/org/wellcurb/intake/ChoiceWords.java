package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.Nearest;

/** Guesses which choices of an entry the words of a column stand for. */
final class ChoiceWords {
  /** Letters of a code that may begin many a word. */
  private static final int BRIEF = 2;

  private final Unread unread;

  /**
   * @param unread tells words that are read without help
   */
  ChoiceWords(Unread unread) {
    this.unread = unread;
  }

  /** True unless the entry is of choices, and none of the texts is like any. */
  static boolean areIn(ColumnSurvey column, Entry entry) {
    if (entry.kind() != Kind.CHOICE || column.filled() == 0) {
      return true;
    }
    return column.texts().keySet().stream()
        .anyMatch(
            text ->
                entry.choice(text) >= 0
                    || near(text.toLowerCase(Locale.ROOT), entry, entry.choices()) != null);
  }

  /**
   * Looks through the texts of a column.
   *
   * @param words takes the texts that mean a choice, and what they mean
   * @param unknown takes those that stand where nothing was chosen
   * @param doubts takes what is to be said of the others
   */
  void find(
      Entry entry,
      ColumnSurvey column,
      Map<String, String> words,
      List<String> unknown,
      List<String> doubts) {
    List<String> brief = new ArrayList<>();
    List<String> choices = entry.kind() == Kind.YES_NO ? List.of("yes", "no") : entry.choices();
    for (Map.Entry<String, Integer> text : column.mostCommon()) {
      String written = text.getKey();
      String lower = written.toLowerCase(Locale.ROOT);
      if (lower.startsWith("select") || lower.startsWith("choose") || lower.equals("#value!")) {
        unknown.add(written);
        continue;
      }
      if (unread.reads(entry, written) || written.matches("[?.-]+")) {
        continue;
      }
      @Nullable String near = near(lower, entry, choices);
      if (near != null) {
        if (words.keySet().stream().noneMatch(written::equalsIgnoreCase)) {
          words.put(written, near);
        }
        if (written.length() <= BRIEF && entry.kind() != Kind.YES_NO) {
          brief.add(written);
        }
      } else if (doubts.size() < 4) {
        doubts.add("'" + written + "' is none of its choices: " + String.join(", ", choices));
      }
    }
    if (!brief.isEmpty()) {
      doubts.add(
          "nothing but how they begin tells what these codes mean: " + String.join(", ", brief));
    }
  }

  /** The one choice that begins so, has these initials, or is a letter or two away. */
  private static @Nullable String near(String written, Entry entry, List<String> choices) {
    TreeSet<String> begins = new TreeSet<>();
    TreeSet<String> initials = new TreeSet<>();
    for (int i = 0; i < choices.size(); i++) {
      List<String> ways = new ArrayList<>(List.of(choices.get(i)));
      ways.addAll(entry.kind() == Kind.YES_NO ? List.of() : entry.spellings().get(i));
      for (String way : ways) {
        if (way.startsWith(written)) {
          begins.add(choices.get(i));
        }
        if (written.length() > 1 && written.equals(way.replaceAll("(\\w)\\w*\\W*", "$1"))) {
          initials.add(choices.get(i));
        }
      }
    }
    if (begins.size() == 1) {
      return begins.first();
    }
    if (begins.isEmpty() && initials.size() == 1) {
      return initials.first();
    }
    @Nullable String bones = withoutVowels(written, entry, choices);
    return bones != null ? bones : written.length() < 4 ? null : Nearest.of(written, choices);
  }

  /** The one choice whose consonants these are, some left out: {@code STL}, {@code LVSTK}. */
  private static @Nullable String withoutVowels(String written, Entry entry, List<String> choices) {
    if (entry.kind() == Kind.YES_NO || !written.matches("[bcdfghj-np-tv-xz]{3,}")) {
      return null;
    }
    TreeSet<String> same = new TreeSet<>();
    TreeSet<String> some = new TreeSet<>();
    for (String choice : choices) {
      String bones = choice.replaceAll("[^bcdfghj-np-tv-xz]", "");
      if (bones.replaceAll("(.)\\1", "$1").equals(written)) {
        same.add(choice);
      } else if (choice.charAt(0) == written.charAt(0) && isWithin(written, bones)) {
        some.add(choice);
      }
    }
    return same.size() == 1 ? same.first() : some.size() == 1 ? some.first() : null;
  }

  /** True if all letters of the one stand in the other, in order. */
  private static boolean isWithin(String few, String many) {
    int at = 0;
    for (int i = 0; i < many.length() && at < few.length(); i++) {
      at += many.charAt(i) == few.charAt(at) ? 1 : 0;
    }
    return at == few.length();
  }
}
