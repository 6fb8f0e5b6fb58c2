package org.wellcurb.rulepack;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Single values of a pack. Whatever has not the shape that the schema asks for is a stumble, and is
 * read as if it were not there.
 */
final class Shapes {
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern WORD =
      Pattern.compile("[a-z][a-z0-9_]*(-([a-z][a-z0-9_]*|[0-9]+))*");
  private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9_]*(\\.[a-z0-9_]+)*");
  private static final Pattern NOT_BLANK = Pattern.compile("\\S");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final int LONGEST_NAME = 80;

  private final Problems problems;

  Shapes(Problems problems) {
    this.problems = problems;
  }

  static boolean isName(String text) {
    return text.length() <= LONGEST_NAME && NAME.matcher(text).matches();
  }

  /** A text that may be empty. */
  @Nullable String text(@Nullable Json value) {
    if (value == null) {
      return null;
    }
    if (value instanceof Json.Text text) {
      return text.value();
    }
    problems.stumble(value);
    return null;
  }

  /** A text that says something. */
  @Nullable String line(@Nullable Json value) {
    return matching(value, text -> !isBlank(text));
  }

  /** The name of a pack, rule, source or table. */
  @Nullable String name(@Nullable Json value) {
    return matching(value, Shapes::isName);
  }

  /** A name that formulas can use. */
  @Nullable String word(@Nullable Json value) {
    return matching(value, text -> text.length() <= LONGEST_NAME && WORD.matcher(text).matches());
  }

  /** What may be the key of an entry. */
  @Nullable String key(@Nullable Json value) {
    return matching(value, text -> KEY.matcher(text).matches());
  }

  /** What may be the key of a date entry, or {@code as-of}. */
  @Nullable String day(@Nullable Json value) {
    return matching(value, text -> text.equals("as-of") || KEY.matcher(text).matches());
  }

  /** A text or a number, as written. */
  @Nullable String amount(@Nullable Json value) {
    if (value instanceof Json.Num number) {
      return number.value();
    }
    return line(value);
  }

  /** A day of the calendar. */
  @Nullable LocalDate date(@Nullable Json value) {
    String text = matching(value, t -> DATE.matcher(t).matches());
    if (text == null || value == null) {
      return null;
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      problems.at(value, "there is no day " + text, "write year, month, day of the calendar");
      return null;
    }
  }

  /** The items of a list; none if there is no list. */
  List<Json> items(@Nullable Json value, int least) {
    if (value == null) {
      return List.of();
    }
    if (!(value instanceof Json.Arr list)) {
      problems.stumble(value);
      return List.of();
    }
    if (list.items().size() < least) {
      problems.stumble(value);
    }
    return list.items();
  }

  /** The items of a list in which nothing may stand twice. */
  List<Json> distinct(@Nullable Json value, int least) {
    List<Json> items = items(value, least);
    Set<String> seen = new HashSet<>();
    for (Json item : items) {
      if (!seen.add(plain(item))) {
        problems.stumble(item);
      }
    }
    return items;
  }

  /** The same for equal values: 1 and 1.0 are one number. */
  private static String plain(Json json) {
    if (json instanceof Json.Text text) {
      return "'" + text.value() + "'";
    }
    if (json instanceof Json.Num number) {
      return new BigDecimal(number.value()).stripTrailingZeros().toString();
    }
    if (json instanceof Json.Arr list) {
      return list.items().stream().map(Shapes::plain).toList().toString();
    }
    if (json instanceof Json.Obj object) {
      Map<String, String> members = new TreeMap<>();
      object.members().forEach(m -> members.put(m.key().value(), plain(m.value())));
      return members.toString();
    }
    return json.kind();
  }

  /** An object; null, and a stumble, if it is none. */
  @Nullable Fields fields(@Nullable Json value) {
    if (value instanceof Json.Obj object) {
      return new Fields(object, this, problems);
    }
    if (value != null) {
      problems.stumble(value);
    }
    return null;
  }

  private @Nullable String matching(
      @Nullable Json value, java.util.function.Predicate<String> shape) {
    String text = text(value);
    if (text == null || value == null || shape.test(text)) {
      return text;
    }
    problems.stumble(value);
    return null;
  }

  /** Blank as the schema's pattern sees it. */
  private static boolean isBlank(String text) {
    return !NOT_BLANK.matcher(text).find();
  }
}
