package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says which words of a list no example of the rule holds: that such a word belongs to the list, no
 * example shows. A note, since each word may need its own example, and a list has many.
 */
final class ListedWords {
  private static final int MOST_NAMED = 4;

  private ListedWords() {}

  static void run(ProofNotes notes) {
    for (Rule rule : notes.ownRules()) {
      Map<Entry, Set<String>> listed = new LinkedHashMap<>();
      ChangedRule.places(rule.program()).forEach(place -> look(place.formula().tree(), listed));
      listed.forEach((entry, words) -> say(rule, entry, words, notes));
    }
  }

  private static void look(Expr expr, Map<Entry, Set<String>> into) {
    if (expr instanceof Expr.IsOneOf is
        && is.words().size() > 1
        && is.word() instanceof Expr.EntryWord of) {
      into.computeIfAbsent(of.entry(), none -> new LinkedHashSet<>()).addAll(is.words());
    }
    Parts.of(expr).forEach(part -> look(part, into));
  }

  private static void say(Rule rule, Entry entry, Set<String> words, ProofNotes notes) {
    List<String> left = new ArrayList<>(words);
    for (Example example : rule.examples()) {
      left.remove(word(entry, example.given().get(entry.key())));
    }
    if (!left.isEmpty()) {
      int named = Math.min(left.size(), MOST_NAMED);
      notes.say(
          Weight.NOTE,
          "rule",
          rule.id(),
          "no example has "
              + entry.key()
              + " '"
              + String.join("' or '", left.subList(0, named))
              + "'"
              + (named < left.size() ? " or " + (left.size() - named) + " more" : "")
              + ", though the rule lists it: look at the spelling and the meaning of each");
    }
  }

  private static String word(Entry entry, @Nullable String written) {
    String text = written == null ? "" : written;
    int choice = entry.choice(text);
    return TableCell.fold(choice < 0 ? text : entry.choices().get(choice)).toLowerCase(Locale.ROOT);
  }
}
