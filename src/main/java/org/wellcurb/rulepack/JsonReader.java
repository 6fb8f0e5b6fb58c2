package org.wellcurb.rulepack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.exc.StreamReadException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads JSON into values that know where they stand, within bounds, without double keys. */
final class JsonReader {
  /** Objects and lists within one another. */
  static final int MOST_DEPTH = 20;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MOST_DEPTH)
                  .maxNumberLength(40)
                  .build())
          .build();

  private final Problems problems;
  private final String text;
  private final JsonParser parser;

  private JsonReader(Problems problems, JsonParser parser) {
    this.problems = problems;
    this.text = problems.text().text();
    this.parser = parser;
  }

  /** The value in the file; null, with a problem noted, if it is not JSON. */
  static @Nullable Json read(Problems problems) {
    try (JsonParser parser = FACTORY.createParser(problems.text().text())) {
      return new JsonReader(problems, parser).whole();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private @Nullable Json whole() throws IOException {
    try {
      if (parser.nextToken() == null) {
        problems.add("", 0, 0, "the file is empty", "prove --new NAME writes a pack to start from");
        return null;
      }
      Json value = value("");
      if (parser.nextToken() != null) {
        int at = offset();
        problems.add("", at, at + 1, "something stands after the end", "take it away");
      }
      return value;
    } catch (StreamConstraintsException e) {
      int at = Math.max(0, offset());
      problems.add(
          "",
          at,
          at + 1,
          "a pack is never so deep, nor a number so long",
          "at most " + MOST_DEPTH + " objects and lists within one another");
      return null;
    } catch (StreamReadException e) {
      NotJson.say(problems, (int) Math.max(0, e.getLocation().getCharOffset()));
      return null;
    }
  }

  private Json value(String pointer) throws IOException {
    int from = offset();
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(pointer, from);
      case START_ARRAY -> array(pointer, from);
      case VALUE_STRING ->
          new Json.Text(pointer, from, Escapes.closing(text, from) + 1, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
        String number = parser.getText();
        yield new Json.Num(pointer, from, from + number.length(), number);
      }
      default -> {
        String word = parser.getText();
        yield new Json.Word(pointer, from, from + word.length(), word);
      }
    };
  }

  private Json object(String pointer, int from) throws IOException {
    List<Json.Member> members = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      int at = offset();
      String inner = pointer + "/" + name.replace("~", "~0").replace("/", "~1");
      Json.Text key = new Json.Text(inner, at, Escapes.closing(text, at) + 1, name);
      if (!keys.add(name)) {
        problems.at(key, "the key \"" + name + "\" stands twice here", "keep one of them");
      }
      parser.nextToken();
      members.add(new Json.Member(key, value(inner)));
    }
    return new Json.Obj(pointer, from, from + 1, members);
  }

  private Json array(String pointer, int from) throws IOException {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(pointer + "/" + items.size()));
    }
    return new Json.Arr(pointer, from, from + 1, items);
  }

  private int offset() {
    return (int) parser.currentTokenLocation().getCharOffset();
  }
}
