package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Units;

/** Takes apart a cell that fills several entries. */
final class Splitting {
  private Splitting() {}

  /**
   * The parts, without outer blanks, by the first separator that gives so many. A unit that stands
   * behind the last figure only is that of all: {@code 9-18 m}.
   *
   * @return empty if none does
   */
  static List<String> parts(String text, List<String> separators, int wanted) {
    // A part may be blank on purpose: 30 / is a top without a bottom.
    List<String> withBlanks = List.of();
    for (String separator : separators) {
      List<String> parts = split(text, separator);
      if (parts.size() == wanted && parts.stream().noneMatch(String::isEmpty)) {
        return withUnit(parts);
      }
      if (parts.size() == wanted && withBlanks.isEmpty()) {
        withBlanks = parts;
      }
    }
    return withBlanks.isEmpty() ? withBlanks : withUnit(withBlanks);
  }

  private static List<String> split(String text, String separator) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int at = text.indexOf(separator); at >= 0; at = text.indexOf(separator, from)) {
      parts.add(HeaderKey.strip(text.substring(from, at)));
      from = at + separator.length();
    }
    parts.add(HeaderKey.strip(text.substring(from)));
    return parts;
  }

  private static List<String> withUnit(List<String> parts) {
    String last = parts.get(parts.size() - 1);
    int at = 0;
    while (at < last.length() && "0123456789.,+- ".indexOf(last.charAt(at)) >= 0) {
      at++;
    }
    String unit = last.substring(at);
    if (at == 0 || unit.isEmpty() || Units.named(unit).isEmpty()) {
      return parts;
    }
    List<String> all = new ArrayList<>();
    for (String part : parts) {
      boolean bare = !part.isEmpty() && Character.isDigit(part.charAt(part.length() - 1));
      all.add(bare ? part + " " + unit : part);
    }
    return all;
  }
}
