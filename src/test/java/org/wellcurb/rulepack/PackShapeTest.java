package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The reader stumbles exactly where the schema refuses, so that a run need not start the validator;
 * and whatever is done to a pack, all that comes of it is a list of problems.
 */
class PackShapeTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path WHOLE = Path.of("src/test/resources/bad-packs/sound-whole/pack.json");

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
  void readerAndSchemaAgree(long seed) throws IOException {
    Random random = new Random(seed);
    JsonNode whole = MAPPER.readTree(Files.readString(WHOLE));
    int refused = 0;
    for (int i = 0; i < 150; i++) {
      JsonNode spoilt = whole.deepCopy();
      for (int n = random.nextInt(3); n >= 0; n--) {
        spoil(spoilt, random);
      }
      String text = spoilt.toPrettyString();
      Problems problems = new Problems(PackText.of("spoilt", text));
      Json root = JsonReader.read(problems);
      assertNotNull(root);
      PackReader reader = new PackReader(problems);
      reader.builtOn(root);
      reader.read(root, new PackBytes(text, "", Map.of()), new Inheritance(), List.of(), true);
      boolean isRefused = !PackSchema.errors(PackSchema.node(root)).isEmpty();
      refused += isRefused ? 1 : 0;
      String hint = "seed " + seed + ", number " + i + "\n" + text;
      assertEquals(isRefused, !problems.stumbles().isEmpty(), hint);
      int before = problems.count();
      PackSchema.check(root, problems);
      assertEquals(isRefused, problems.count() > before, hint);
    }
    assertTrue(refused > 30, "seed " + seed + " spoils too little: " + refused);
    assertTrue(refused < 150, "seed " + seed + " spoils everything");
  }

  @Test
  void theWholePackIsSoundAndHasEveryKeyOfTheSchema() throws IOException, PackException {
    assertFalse(PackLoader.loadForAuthor(WHOLE.toString()).rules().isEmpty());
    JsonNode schema =
        MAPPER.readTree(Files.readString(Path.of("rules/schema/rule-pack.schema.json")));
    String pack = Files.readString(WHOLE);
    for (JsonNode properties : schema.findValues("properties")) {
      properties
          .fieldNames()
          .forEachRemaining(key -> assertTrue(pack.contains("\"" + key + "\""), key));
    }
  }

  @Test
  void everyKeyOfTheSchemaHasHelp() throws IOException {
    JsonNode schema =
        MAPPER.readTree(Files.readString(Path.of("rules/schema/rule-pack.schema.json")));
    for (JsonNode properties : schema.findValues("properties")) {
      properties
          .fields()
          .forEachRemaining(
              each -> {
                JsonNode value = each.getValue();
                boolean isCondition = value.has("const");
                String ref = value.path("$ref").asText("");
                boolean isHelped =
                    value.has("description")
                        || (!ref.isEmpty() && schema.at(ref.substring(1)).has("description"));
                assertTrue(isCondition || isHelped, each.getKey() + " has no description");
              });
    }
  }

  private static void spoil(JsonNode root, Random random) {
    List<JsonNode> places = new ArrayList<>();
    collect(root, places);
    JsonNode place = places.get(random.nextInt(places.size()));
    if (place instanceof ObjectNode object) {
      List<String> keys = new ArrayList<>();
      object.fieldNames().forEachRemaining(keys::add);
      if (keys.isEmpty()) {
        return;
      }
      String key = keys.get(random.nextInt(keys.size()));
      switch (random.nextInt(4)) {
        case 0 -> object.remove(key);
        case 1 -> object.set(key, other(random));
        case 2 -> object.set("x" + key, object.get(key));
        default -> object.set(key + (random.nextBoolean() ? "-" : "x"), object.remove(key));
      }
    } else if (place instanceof ArrayNode list && !list.isEmpty()) {
      int at = random.nextInt(list.size());
      switch (random.nextInt(4)) {
        case 0 -> list.remove(at);
        case 1 -> list.set(at, other(random));
        case 2 -> list.add(list.get(at).deepCopy());
        default -> list.removeAll();
      }
    }
  }

  private static void collect(JsonNode node, List<JsonNode> into) {
    if (node.isContainerNode()) {
      into.add(node);
      node.forEach(child -> collect(child, into));
    }
  }

  private static JsonNode other(Random random) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    return switch (random.nextInt(12)) {
      case 0 -> make.nullNode();
      case 1 -> make.booleanNode(true);
      case 2 -> make.numberNode(7);
      case 3 -> make.textNode("");
      case 4 -> make.textNode(" ");
      case 5 -> make.textNode("well.depth");
      case 6 -> make.textNode("2024-04-01");
      case 7 -> make.textNode("Some Text");
      case 8 -> make.textNode("a-name");
      case 9 -> make.objectNode();
      case 10 -> make.arrayNode();
      default -> make.textNode("deficiency");
    };
  }
}
