package org.wellcurb.report.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences of the program's own that come to pages in English, since files hold them too: found
 * again by the bundle {@code said}, and said in the language of the page.
 */
final class Said {
  static final String PREFIX = "said.";

  /** Longer sentences are not looked at: no reader makes them. */
  private static final int MOST = 2000;

  private static final Pattern PLACE = Pattern.compile("\\{[0-9]}");

  private record Sentence(String key, Pattern pattern, int letters) {}

  private final List<Sentence> sentences = new ArrayList<>();
  private final Words language;

  Said(Words english, Words language) {
    this.language = language;
    for (String key : english.keys()) {
      if (key.startsWith(PREFIX)) {
        sentences.add(sentence(key, english.say(key)));
      }
    }
    // What says most of itself is tried first: "Column {0}: {1}." would take many another.
    sentences.sort(
        Comparator.comparingInt(Sentence::letters).reversed().thenComparing(Sentence::key));
  }

  private static Sentence sentence(String key, String text) {
    StringBuilder pattern = new StringBuilder();
    Matcher place = PLACE.matcher(text);
    int at = 0;
    while (place.find()) {
      pattern.append(Pattern.quote(text.substring(at, place.start()))).append("(.+?)");
      at = place.end();
    }
    pattern.append(Pattern.quote(text.substring(at)));
    int letters = PLACE.matcher(text).replaceAll("").length();
    return new Sentence(key, Pattern.compile(pattern.toString(), Pattern.DOTALL), letters);
  }

  /** The sentence in the language; empty where it is none of those. */
  String in(String english) {
    if (english.length() > MOST) {
      return "";
    }
    for (Sentence each : sentences) {
      Matcher matcher = each.pattern().matcher(english);
      if (matcher.matches()) {
        Object[] parts = new Object[matcher.groupCount()];
        for (int i = 0; i < parts.length; i++) {
          String part = matcher.group(i + 1);
          String said = in(part);
          parts[i] = said.isEmpty() ? language.entry(part) : said;
        }
        return language.say(each.key(), parts);
      }
    }
    return "";
  }
}
