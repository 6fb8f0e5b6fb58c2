package org.wellcurb.report;

import java.util.Locale;
import org.wellcurb.judgement.Wanted;
import org.wellcurb.report.words.Words;

/** Words of forms and of rules, which tables have in no language, as pages say them. */
final class FormWords {
  /** What stands for a figure that is not known. */
  private static final String UNKNOWN = "not known";

  private final Words words;

  FormWords(Words words) {
    this.words = words;
  }

  /** What a rule asks for: one word, or several to choose from. */
  String wanted(String wanted) {
    String all =
        String.join(words.say("wanted.or"), Wanted.words(wanted).stream().map(this::word).toList());
    return Wanted.isNone(wanted) ? words.say("wanted.but", all) : all;
  }

  /** A word of a form or of a rule. */
  String word(String word) {
    return switch (word.strip().toLowerCase(Locale.ROOT)) {
      case Wanted.GIVEN -> words.say("wanted.given");
      case Wanted.NOTHING -> words.say("wanted.nothing");
      case UNKNOWN -> words.say("amount.unknown");
      case "yes" -> words.say("yes");
      case "no" -> words.say("no");
      default -> words.choice(word);
    };
  }
}
