package org.wellcurb.rulepack;

import java.util.ArrayDeque;
import java.util.Deque;

/** Says in plain words why a text is not JSON. */
final class NotJson {
  private NotJson() {}

  /** Notes the problem at the place where the parser gave up. */
  static void say(Problems problems, int where) {
    String text = problems.text().text();
    int at = Math.min(where, text.length());
    // The parser points at the character or just after it: go to the one that is wrong.
    int here = at < text.length() && !isBlank(text.charAt(at)) ? at : before(text, at);
    if (at >= text.length() || (text.substring(at).isBlank() && isWhole(text, here))) {
      problems.add(
          "",
          Math.max(0, before(text, text.length())),
          text.length(),
          "the file ends too soon",
          "close every bracket and quote");
      return;
    }
    char c = text.charAt(here);
    int last = before(text, here);
    char previous = last >= 0 ? text.charAt(last) : ' ';
    char open = c == '}' || c == ']' ? open(text, here) : ' ';
    if ((c == ']' && open == '{') || (c == '}' && open == '[')) {
      String missing = open == '{' ? "}" : "]";
      say(problems, here, "a " + missing + " is missing before this", "put a " + missing + " here");
    } else if ((c == '}' || c == ']') && previous == ',') {
      say(problems, last, "a comma stands before a closing bracket", "take the comma away");
    } else if (c == '/' || c == '#') {
      say(problems, here, "JSON has no comments", "write the remark under the key \"$comment\"");
    } else if (c == '\'' || c == '“' || c == '”' || c == '`') {
      say(problems, here, "JSON quotes with \"", "write \" in its place");
    } else if ((c == '"' || c == '{' || c == '[') && ends(previous)) {
      say(problems, last, "a comma is missing after this", "put a comma here");
    } else if (text.charAt(at) == '\t' && isWithinText(text, at)) {
      say(problems, at, "a tab stands inside a text", "write a blank in its place");
    } else if (c < ' ' || (here < at && text.charAt(at) < ' ')) {
      say(problems, here, "a line ends inside a text", "close the quote, or join the lines");
    } else if (here > 0 && text.charAt(here - 1) == '"' && Character.isLetterOrDigit(c)) {
      say(
          problems,
          here - 1,
          "this quote ends the text, and more stands after it",
          "a word in a condition stands in ' ', such as 'household'; elsewhere put a backslash"
              + " before the quote");
    } else {
      say(problems, here, "this is not JSON", "look at the quotes, commas and brackets around it");
    }
  }

  /** The bracket that stands open at a place; a blank if none does. */
  private static char open(String text, int to) {
    Deque<Character> open = new ArrayDeque<>();
    boolean isText = false;
    for (int i = 0; i < to; i++) {
      char c = text.charAt(i);
      if (isText && c == '\\') {
        i++;
      } else if (c == '"') {
        isText = !isText;
      } else if (!isText && (c == '{' || c == '[')) {
        open.push(c);
      } else if (!isText && (c == '}' || c == ']')) {
        open.poll();
      }
    }
    Character last = open.peek();
    return last == null ? ' ' : last;
  }

  private static void say(Problems problems, int at, String what, String mend) {
    problems.add("", at, at + 1, what, mend);
  }

  /** True if a quote is open on the line before this place. */
  private static boolean isWithinText(String text, int at) {
    boolean isOpen = false;
    for (int i = text.lastIndexOf('\n', at - 1) + 1; i < at; i++) {
      if (text.charAt(i) == '\\' && isOpen) {
        i++;
      } else if (text.charAt(i) == '"') {
        isOpen = !isOpen;
      }
    }
    return isOpen;
  }

  private static boolean isWhole(String text, int last) {
    return last >= 0 && text.substring(last + 1).isBlank();
  }

  private static boolean ends(char c) {
    return c == '"' || c == '}' || c == ']' || Character.isLetterOrDigit(c);
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  private static int before(String text, int at) {
    int i = at - 1;
    while (i >= 0 && isBlank(text.charAt(i))) {
      i--;
    }
    return i;
  }
}
