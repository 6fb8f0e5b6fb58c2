package org.wellcurb.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;

/** The least that reading JSON lines into trees can cost: each value touched once, one thread. */
public final class BareJson {
  private BareJson() {}

  /** FILE. */
  public static void main(String[] arguments) throws IOException {
    long rows = 0;
    long letters = 0;
    try (MappingIterator<JsonNode> trees =
        new ObjectMapper().readerFor(JsonNode.class).readValues(new File(arguments[0]))) {
      while (trees.hasNext()) {
        rows++;
        letters += letters(trees.next());
      }
    }
    System.out.println(rows + " rows, " + letters + " letters");
  }

  private static long letters(JsonNode node) {
    if (node.isValueNode()) {
      return node.asText().length();
    }
    long letters = 0;
    for (JsonNode child : node) {
      letters += letters(child);
    }
    return letters;
  }
}
