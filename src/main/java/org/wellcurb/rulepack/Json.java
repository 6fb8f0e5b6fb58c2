package org.wellcurb.rulepack;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A value of JSON that knows where it stands. */
sealed interface Json {

  /** Its JSON pointer (RFC 6901). */
  String pointer();

  /** Place of its first character in the file. */
  int from();

  /** Place after the last character that a message underlines. */
  int to();

  /** What people call this kind of value. */
  String kind();

  /** An object; a message underlines its opening bracket. */
  record Obj(String pointer, int from, int to, List<Member> members) implements Json {
    public Obj {
      members = List.copyOf(members);
    }

    /** The value under this key, the first if it stands twice; null if there is none. */
    @Nullable Json get(String key) {
      for (Member member : members) {
        if (member.key.value.equals(key)) {
          return member.value;
        }
      }
      return null;
    }

    /** The key itself; null if there is none. */
    @Nullable Text key(String key) {
      for (Member member : members) {
        if (member.key.value.equals(key)) {
          return member.key;
        }
      }
      return null;
    }

    @Override
    public String kind() {
      return "an object";
    }
  }

  /** A key and its value. */
  record Member(Text key, Json value) {}

  /** A list; a message underlines its opening bracket. */
  record Arr(String pointer, int from, int to, List<Json> items) implements Json {
    public Arr {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /** A text, from its opening quote to its closing one. */
  record Text(String pointer, int from, int to, String value) implements Json {
    /** By its words: to make ready a hash of all parts takes longer than one run saves by it. */
    @Override
    public int hashCode() {
      return value.hashCode();
    }

    @Override
    public String kind() {
      return "a text";
    }
  }

  /** A number, as written. */
  record Num(String pointer, int from, int to, String value) implements Json {
    @Override
    public String kind() {
      return "a number";
    }
  }

  /** {@code true}, {@code false} or {@code null}. */
  record Word(String pointer, int from, int to, String value) implements Json {
    @Override
    public String kind() {
      return value;
    }
  }
}
