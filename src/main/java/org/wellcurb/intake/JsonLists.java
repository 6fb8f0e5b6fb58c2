package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The lists of a JSON record: layers, setbacks, variances; and values that no entry names. */
final class JsonLists {
  private JsonLists() {}

  /** What an item of a list may hold under a name. */
  private enum Value {
    AMOUNT,
    TEXT
  }

  private static final Map<String, Value> LAYER =
      Map.of("from", Value.AMOUNT, "to", Value.AMOUNT, "material", Value.TEXT);
  private static final Map<String, Value> SETBACK =
      Map.of("from", Value.TEXT, "distance", Value.AMOUNT);

  static void layers(JsonParser parser, JsonParsing into) throws IOException, RecordFault {
    if (!isList(parser)) {
      return;
    }
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Map<String, String> item = item(parser, LAYER);
      into.layers.add(
          new JsonParsing.RawLayer(text(item, "from"), text(item, "to"), text(item, "material")));
    }
  }

  static void setbacks(JsonParser parser, JsonParsing into) throws IOException, RecordFault {
    if (!isList(parser)) {
      return;
    }
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Map<String, String> item = item(parser, SETBACK);
      into.setbacks.add(new JsonParsing.RawSetback(text(item, "from"), text(item, "distance")));
    }
  }

  /** Texts of a list, as one text with semicolons. */
  static String texts(JsonParser parser) throws IOException, RecordFault {
    StringBuilder out = new StringBuilder();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      if (parser.currentToken() != JsonToken.VALUE_STRING) {
        throw wrong(parser, "text");
      }
      out.append(out.isEmpty() ? "" : "; ").append(parser.getText().replace(';', ','));
    }
    return out.toString();
  }

  /** Goes past a value of which nothing is known but that its names differ. */
  static void skip(JsonParser parser) throws IOException, RecordFault {
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        skip(parser);
      }
    } else if (parser.currentToken() == JsonToken.START_OBJECT) {
      Set<String> names = new HashSet<>();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        if (!names.add(parser.currentName())) {
          throw new RecordFault(JsonParsing.pointer(parser), JsonParsing.TWICE);
        }
        parser.nextToken();
        skip(parser);
      }
    }
  }

  static RecordFault wrong(JsonParser parser, String wanted) {
    return new RecordFault(JsonParsing.pointer(parser), "is not " + wanted);
  }

  private static boolean isList(JsonParser parser) throws RecordFault {
    if (parser.currentToken() == JsonToken.VALUE_NULL) {
      return false;
    }
    if (parser.currentToken() != JsonToken.START_ARRAY) {
      throw wrong(parser, "a list");
    }
    return true;
  }

  private static Map<String, String> item(JsonParser parser, Map<String, Value> names)
      throws IOException, RecordFault {
    if (parser.currentToken() != JsonToken.START_OBJECT) {
      throw wrong(parser, "an object");
    }
    Map<String, String> item = new HashMap<>();
    Set<String> seen = new HashSet<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      if (!seen.add(name)) {
        throw new RecordFault(JsonParsing.pointer(parser), JsonParsing.TWICE);
      }
      @Nullable Value value = names.get(name);
      JsonToken token = parser.nextToken();
      if (value == null) {
        skip(parser);
      } else if (token == JsonToken.VALUE_STRING || (value == Value.AMOUNT && token.isNumeric())) {
        item.put(name, parser.getText());
      } else if (token != JsonToken.VALUE_NULL) {
        throw wrong(parser, value == Value.AMOUNT ? "a number or text" : "text");
      }
    }
    return item;
  }

  private static String text(Map<String, String> item, String name) {
    return item.getOrDefault(name, "");
  }
}
