package org.wellcurb.record;

import java.util.ArrayList;
import java.util.List;

/**
 * Words that stand in a cell for no value, in any kind of entry. An entry that has the word among
 * its choices takes it as that choice.
 *
 * <p>{@code N/A} says that the entry does not apply; bare {@code NA} is what programs write for a
 * missing value, so it says only that nothing is known.
 */
final class CellWords {
  static final int UNKNOWN = 1;
  static final int NOT_APPLICABLE = 2;

  private static final List<String> UNKNOWN_WORDS =
      List.of(
          "unknown",
          "unkown",
          "unknow",
          "unknwon",
          "uknown",
          "unknown.",
          "unk",
          "unk.",
          "ukn",
          "not known",
          "not know",
          "don't know",
          "dont know",
          "undetermined",
          "unspecified",
          "undefined",
          "undisclosed",
          "missing",
          "?",
          "??",
          "???",
          "????",
          "-",
          "--",
          "---",
          "----",
          "\u2013",
          "\u2014",
          "_",
          "__",
          "___",
          ".",
          "..",
          "...",
          "\u2026",
          "na",
          "nan",
          "null",
          "(null)",
          "<null>",
          "\\n",
          "none given",
          "none stated",
          "none recorded",
          "none reported",
          "not available",
          "not avail",
          "unavailable",
          "not given",
          "not stated",
          "not recorded",
          "not reported",
          "not supplied",
          "not provided",
          "not specified",
          "not entered",
          "not measured",
          "not taken",
          "not tested",
          "not noted",
          "not determined",
          "not listed",
          "no data",
          "no record",
          "no records",
          "no info",
          "no information",
          "no reading",
          "no measurement",
          "no value",
          "no entry",
          "blank",
          "empty",
          "tbd",
          "tba",
          "tbc",
          "to be determined",
          "to follow",
          "pending",
          "nr",
          "n/r",
          "n.r.",
          "n/k",
          "nk",
          "no date",
          "select",
          "select one",
          "select...",
          "-select-",
          "--select--",
          "- select -",
          "-- select --",
          "please select",
          "(select)",
          "choose",
          "choose one",
          "#value!",
          "#n/a",
          "#ref!",
          "#div/0!",
          "#name?",
          "#num!",
          "#null!",
          "####",
          "#####",
          "inconnu",
          "inconnue",
          "non connu",
          "pas connu",
          "non disponible",
          "n/d",
          "non renseign\u00E9");

  private static final List<String> NOT_APPLICABLE_WORDS =
      List.of(
          "n/a",
          "n / a",
          "n\\a",
          "n.a.",
          "n.a",
          "n/a.",
          "not applicable",
          "not appl",
          "not appl.",
          "non applicable",
          "non-applicable",
          "does not apply",
          "doesn't apply",
          "inapplicable",
          "none",
          "sans objet",
          "s.o.",
          "s/o");

  /** The usual words. */
  static final WordTable USUAL = usual();

  private CellWords() {}

  private static WordTable usual() {
    List<String> words = new ArrayList<>(UNKNOWN_WORDS);
    List<Integer> meanings = new ArrayList<>();
    for (int i = 0; i < UNKNOWN_WORDS.size(); i++) {
      meanings.add(UNKNOWN);
    }
    for (String word : NOT_APPLICABLE_WORDS) {
      words.add(word);
      meanings.add(NOT_APPLICABLE);
    }
    return WordTable.of(words, meanings);
  }
}
