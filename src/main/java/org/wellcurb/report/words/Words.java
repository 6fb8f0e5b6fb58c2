package org.wellcurb.report.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FrenchSpaces;
import org.wellcurb.formula.Symbols;
import org.wellcurb.quantity.Unit;

/**
 * The words of pages in one language, from the bundles {@code words}, {@code labels}, {@code
 * drawings} and {@code said}. Both languages have every key; a key that no bundle has is a mistake
 * of the program.
 */
public final class Words {
  private static final Words ENGLISH = load(Language.EN);

  /** Read when they are first asked for: hardly any run speaks two languages. */
  private static final class Others {
    static final Map<Language, Words> ALL = others();
  }

  private final Language language;
  private final Map<String, String> texts = new HashMap<>();
  private @Nullable Said said;

  private Words(Language language) {
    this.language = language;
  }

  /** The words in this language. */
  public static Words in(Language language) {
    return language == Language.EN ? ENGLISH : Objects.requireNonNull(Others.ALL.get(language));
  }

  public Language language() {
    return language;
  }

  /** The sign of a unit on pages of this language; empty for a bare number. */
  public String unit(Unit unit) {
    return Symbols.of(unit, language == Language.FR ? Locale.FRENCH : Locale.ROOT);
  }

  /** All keys, in code point order. */
  public Set<String> keys() {
    return new TreeSet<>(texts.keySet());
  }

  /** True if the bundles have this key. */
  public boolean has(String key) {
    return texts.containsKey(key);
  }

  /**
   * The text of this key, with {@code {0}}, {@code {1}}, ... replaced. What is put in is never read
   * again, so a brace in a record stays a brace.
   */
  public String say(String key, Object... arguments) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("no words for " + key + " in " + language.code());
    }
    return arguments.length == 0 ? text : fill(text, arguments);
  }

  /**
   * The text for this many: {@code key.one} or {@code key.many}, with the count as {@code {0}} and
   * the others after it.
   */
  public String count(String key, long many, Object... others) {
    boolean one = many == 1 || (many == 0 && language == Language.FR);
    Object[] arguments = new Object[others.length + 1];
    arguments[0] = many;
    System.arraycopy(others, 0, arguments, 1, others.length);
    return say(key + (one ? ".one" : ".many"), arguments);
  }

  /** A number of days that is at least and at most so much. */
  public String days(long least, long most) {
    String days = count("days", most);
    return least == most ? days : say("amount.range", least, days);
  }

  /**
   * What a reader of files or packs says in English, in this language; empty where this language is
   * English, or has no words for it.
   */
  public String said(String english) {
    return said == null ? "" : said.in(english);
  }

  /** What pages call an entry. A key that the catalogue lacks is given back as it is. */
  public String entry(String key) {
    return texts.getOrDefault("entry." + key, key);
  }

  /** What pages call a choice of an entry, and its yes or no. */
  public String choice(String choice) {
    if (choice.equals("yes") || choice.equals("no")) {
      return say(choice);
    }
    return texts.getOrDefault("choice." + choice.replace(' ', '_'), choice);
  }

  private static String fill(String text, Object[] arguments) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      int open = text.indexOf('{', at);
      if (open < 0) {
        break;
      }
      int place = text.charAt(open + 1) - '0';
      out.append(text, at, open).append(arguments[place]);
      at = open + 3;
    }
    return out.append(text, at, text.length()).toString();
  }

  private static Map<Language, Words> others() {
    Map<Language, Words> all = new EnumMap<>(Language.class);
    for (Language language : Language.values()) {
      if (language != Language.EN) {
        Words words = load(language);
        words.said = new Said(ENGLISH, words);
        all.put(language, words);
      }
    }
    return all;
  }

  private static Words load(Language language) {
    Words words = new Words(language);
    String suffix = language == Language.EN ? "" : "_" + language.code();
    words.read("words" + suffix + ".properties");
    words.read("labels" + suffix + ".properties");
    words.read("drawings" + suffix + ".properties");
    words.read("said" + suffix + ".properties");
    return words;
  }

  private void read(String file) {
    try (InputStream in =
        Objects.requireNonNull(Words.class.getResourceAsStream("/org/wellcurb/report/" + file))) {
      PropertyResourceBundle bundle =
          new PropertyResourceBundle(new InputStreamReader(in, StandardCharsets.UTF_8));
      for (String key : bundle.keySet()) {
        String text = bundle.getString(key);
        // Drawings break their own lines.
        boolean isSet = language == Language.FR && !file.startsWith("drawings");
        texts.put(key, isSet ? FrenchSpaces.set(text) : text);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
