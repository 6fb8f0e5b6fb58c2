package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;

/** What the README says of header maps is true: each piece of a map in it can stand in one. */
class ReadmeMapsTest {
  private static final String ID = "{\"column\": \"NO\", \"entry\": \"record.id\"}";

  private static String table() throws Exception {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("| to say | write in the map |");
    assertTrue(from > 0);
    return readme.substring(from, readme.indexOf("\n\n", from));
  }

  private static boolean isMap(String json) {
    try {
      HeaderMaps.parse("README.md", json, Catalogue.standard());
      return true;
    } catch (MapException e) {
      return false;
    }
  }

  @Test
  void eachPieceCanStandInAMap() throws Exception {
    int pieces = 0;
    Matcher piece = Pattern.compile("`([{\"][^`]*)`").matcher(table());
    while (piece.find()) {
      String text = piece.group(1);
      if (!text.contains(":")) {
        continue;
      }
      pieces++;
      String title = text.startsWith("\"title\"") ? "" : "\"title\": \"t\", ";
      String head = "{" + title + "\"columns\": [" + ID;
      boolean column = text.startsWith("{") && isMap(head + ", " + text + "]}");
      boolean whole = isMap(head + "], " + text + "}");
      String within = ", {\"column\": \"X\", \"entry\": \"well.depth\", " + text + "}]}";
      String join =
          "], \"joins\": [{\"file\": \"f\", \"id\": \"X\", \"columns\": [], " + text + "}]}";
      assertTrue(column || whole || isMap(head + within) || isMap(head + join), text);
    }
    assertTrue(pieces >= 18, pieces + " pieces");
  }

  @Test
  void noKeyOfTheSchemaIsLeftOut() throws Exception {
    Set<String> keys = new TreeSet<>();
    try (InputStream in = MapSchema.class.getResourceAsStream("header-map.schema.json")) {
      names(new ObjectMapper().readTree(in), keys);
    }
    keys.removeAll(List.of("$schema"));
    String table = table();
    assertEquals(List.of(), keys.stream().filter(key -> !table.contains(key)).toList());
  }

  private static void names(JsonNode schema, Set<String> keys) {
    schema.path("properties").fieldNames().forEachRemaining(keys::add);
    schema.forEach(node -> names(node, keys));
  }
}
