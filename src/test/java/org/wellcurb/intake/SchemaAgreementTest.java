package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordSchema;

/**
 * The quick reader of JSON sets aside exactly the records that the schema refuses, over thousands
 * of records made from the schema with something wrong here and there.
 */
class SchemaAgreementTest {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  @Test
  void setsAsideWhatTheSchemaRefuses() throws java.io.IOException {
    long seed = 2020_12;
    Random random = new Random(seed);
    String text = RecordSchema.text(Catalogue.standard());
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON);
    JsonNode shape = new ObjectMapper().readTree(text);
    int refused = 0;
    int count = 4000;
    for (int i = 0; i < count; i++) {
      JsonNode record = value(shape, random, random.nextInt(2) == 0 ? 0.03 : 0, 0);
      if (!record.isObject()) {
        continue;
      }
      String line = record.toString();
      boolean wrong = !schema.validate(line, InputFormat.JSON).isEmpty();
      Gathered all =
          Gathered.of("x.ndjson", line.getBytes(StandardCharsets.UTF_8), RowSplitter.CHUNK);
      assertEquals(wrong ? 1 : 0, all.aside.size(), "seed " + seed + ", " + line + all.aside);
      assertEquals(wrong ? 0 : 1, all.records.size(), "seed " + seed + ", " + line);
      refused += wrong ? 1 : 0;
    }
    assertTrue(refused > count / 10 && refused < count * 9 / 10, refused + " refused");
  }

  /** A value as the schema asks for it; now and then one of any other type. */
  private static JsonNode value(JsonNode shape, Random random, double faults, int depth) {
    List<String> types = types(shape);
    String type = types.get(random.nextInt(types.size()));
    if (depth > 0 && random.nextDouble() < faults) {
      type =
          List.of("object", "array", "string", "number", "boolean", "null").get(random.nextInt(6));
    }
    return switch (type) {
      case "object" -> object(shape, random, faults, depth);
      case "array" -> array(shape, random, faults, depth);
      case "number" -> JSON.numberNode(random.nextInt(2000) / 4.0 - 10);
      case "boolean" -> JSON.booleanNode(random.nextBoolean());
      case "null" -> JSON.nullNode();
      default -> JSON.textNode(text(shape, random));
    };
  }

  private static List<String> types(JsonNode shape) {
    List<String> types = new ArrayList<>();
    JsonNode type = shape.path("type");
    if (type.isTextual()) {
      types.add(type.asText());
    }
    type.forEach(t -> types.add(t.asText()));
    return types.isEmpty() ? List.of("string", "object", "array", "null", "boolean") : types;
  }

  private static JsonNode object(JsonNode shape, Random random, double faults, int depth) {
    ObjectNode node = JSON.objectNode();
    boolean root = depth == 0;
    shape
        .path("properties")
        .properties()
        .forEach(
            e -> {
              boolean needed = e.getKey().equals("record") || e.getKey().equals("id");
              boolean leftOut = needed ? random.nextDouble() < faults : random.nextInt(4) > 0;
              if (!leftOut) {
                node.set(e.getKey(), value(e.getValue(), random, faults, depth + 1));
              }
            });
    if (random.nextInt(8) == 0 && depth < 4) {
      node.set(root ? "office" : "colour", value(JSON.objectNode(), random, 0, depth + 1));
    }
    return node;
  }

  private static JsonNode array(JsonNode shape, Random random, double faults, int depth) {
    var node = JSON.arrayNode();
    int items = random.nextInt(3);
    for (int i = 0; i < items && depth < 5; i++) {
      node.add(value(shape.path("items"), random, faults, depth + 1));
    }
    return node;
  }

  private static String text(JsonNode shape, Random random) {
    String[] texts = {
      "A-1",
      "212 ft",
      "unknown",
      "",
      " ",
      "\u00A0",
      "\u200B",
      "\u0000",
      "n/a",
      "\u00E9\n\"",
      "60 gal",
      "steel",
      "yes",
      "septic tank"
    };
    boolean id = shape.has("pattern") && random.nextInt(10) > 0;
    return id ? "W-" + random.nextInt(1000) : texts[random.nextInt(texts.length)];
  }
}
