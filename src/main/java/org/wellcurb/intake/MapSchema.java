package org.wellcurb.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.path.NodePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import org.wellcurb.record.Nearest;

/** Checks the shape of a header map against the schema that ships. */
final class MapSchema {
  /** Only made when a map is read: the validator is slow to start. */
  private static final class Held {
    static final JsonNode NODE = read();
    static final Schema SCHEMA =
        SchemaRegistry.withDialect(Dialects.getDraft202012()).getSchema(NODE);
  }

  private MapSchema() {}

  /** Notes whatever the schema refuses. */
  static void check(MapText text) {
    for (Error error : Held.SCHEMA.validate(text.root())) {
      say(text, error);
    }
  }

  private static void say(MapText text, Error error) {
    String pointer = pointer(error.getInstanceLocation());
    JsonNode keyword = error.getSchemaNode();
    String property = error.getProperty() == null ? "" : error.getProperty();
    switch (error.getKeyword()) {
      case "required" -> text.add(pointer, "the key \"" + property + "\" is missing", "add it");
      case "additionalProperties" -> {
        List<String> keys = keys(error);
        String nearest = Nearest.of(property, keys);
        String mend =
            nearest == null
                ? "the keys here are " + String.join(", ", keys)
                : "did you mean \"" + nearest + "\"?";
        text.add(
            pointer + "/" + escape(property), "there is no key \"" + property + "\" here", mend);
      }
      case "enum" -> {
        List<String> words = new ArrayList<>();
        keyword.forEach(w -> words.add(w.asText()));
        text.add(
            pointer,
            "this is none of the words that may stand here",
            "one of: " + String.join(" | ", words));
      }
      case "type" -> text.add(pointer, "this cannot stand here", "write " + keyword);
      default -> text.add(pointer, error.getMessage(), "");
    }
  }

  private static List<String> keys(Error error) {
    JsonNode at = Held.NODE;
    NodePath path = error.getEvaluationPath();
    for (int i = 0; i < path.getNameCount() - 1; i++) {
      String step = String.valueOf(path.getElement(i));
      at =
          step.equals("$ref")
              ? Held.NODE.at(at.path("$ref").asText().substring(1))
              : at.isArray() ? at.path(Integer.parseInt(step)) : at.path(step);
    }
    List<String> keys = new ArrayList<>();
    for (Iterator<String> i = at.path("properties").fieldNames(); i.hasNext(); ) {
      String key = i.next();
      if (!key.startsWith("$")) {
        keys.add(key);
      }
    }
    return keys;
  }

  private static String pointer(NodePath path) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < path.getNameCount(); i++) {
      out.append('/').append(escape(String.valueOf(path.getElement(i))));
    }
    return out.toString();
  }

  private static String escape(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  private static JsonNode read() {
    try (InputStream in = MapSchema.class.getResourceAsStream("header-map.schema.json")) {
      return new ObjectMapper().readTree(Objects.requireNonNull(in, "header-map.schema.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
