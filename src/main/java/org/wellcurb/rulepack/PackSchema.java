package org.wellcurb.rulepack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/** Checks the shape of a pack against the JSON Schema that ships. */
final class PackSchema {
  private static final Pattern BRANCH = Pattern.compile(".*/oneOf/[0-9]+/.*");

  private PackSchema() {}

  /** Only made when a schema is asked for: the validator is slow to start. */
  private static final class Held {
    static final JsonNode NODE = read();
    static final Schema SCHEMA =
        SchemaRegistry.withDialect(Dialects.getDraft202012()).getSchema(NODE);
  }

  /** Notes whatever the schema refuses. */
  static void check(Json root, Problems problems) {
    int before = problems.count();
    SchemaWords words = new SchemaWords(Held.NODE, root, problems);
    for (Error error : errors(node(root))) {
      // What each branch of a oneOf lacks is said once, by the oneOf itself.
      if (!BRANCH.matcher(error.getEvaluationPath().toString()).matches()) {
        words.say(error);
      }
    }
    if (problems.count() == before) {
      Set<Json> said = new HashSet<>();
      for (Json at : problems.stumbles()) {
        if (said.add(at)) {
          problems.at(at, "this has not the shape that it must have", "see rules/README.md");
        }
      }
    }
  }

  /** What the validator says of a value. */
  static List<Error> errors(JsonNode node) {
    return Held.SCHEMA.validate(node);
  }

  private static JsonNode read() {
    try (InputStream in =
        PackSchema.class.getResourceAsStream("/rules/schema/rule-pack.schema.json")) {
      return new ObjectMapper().readTree(Objects.requireNonNull(in, "rule-pack.schema.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The value as the validator takes it. */
  static JsonNode node(Json json) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (json instanceof Json.Obj object) {
      ObjectNode node = make.objectNode();
      for (Json.Member member : object.members()) {
        node.set(member.key().value(), node(member.value()));
      }
      return node;
    }
    if (json instanceof Json.Arr list) {
      ArrayNode node = make.arrayNode();
      list.items().forEach(item -> node.add(node(item)));
      return node;
    }
    if (json instanceof Json.Text text) {
      return make.textNode(text.value());
    }
    if (json instanceof Json.Num number) {
      return make.numberNode(new BigDecimal(number.value()));
    }
    return json instanceof Json.Word word && !word.value().equals("null")
        ? make.booleanNode(word.value().equals("true"))
        : make.nullNode();
  }
}
