package org.wellcurb.rulepack;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The schema as a tree, for the words that it has for its readers. */
final class SchemaTree {
  private static final Set<String> DOWN = Set.of("items", "additionalProperties", "propertyNames");

  private final JsonNode root;

  SchemaTree(JsonNode root) {
    this.root = root;
  }

  /**
   * Where a keyword of the schema stands.
   *
   * @param holders the schemas that describe the value, the outermost first
   * @param keyword the value of the keyword itself
   */
  record Spot(List<JsonNode> holders, JsonNode keyword) {

    String value() {
      return keyword.asText();
    }

    /** The words that an {@code enum} lists. */
    List<String> list() {
      List<String> words = new ArrayList<>();
      keyword.forEach(word -> words.add(word.asText()));
      return words;
    }

    /** The keys of the object. */
    List<String> keys() {
      List<String> keys = new ArrayList<>();
      for (JsonNode holder : holders) {
        holder.path("properties").fieldNames().forEachRemaining(keys::add);
      }
      keys.remove("$comment");
      return keys;
    }

    /** What a key of the object means, as the rest of a sentence. */
    String meaningOf(String key) {
      for (JsonNode holder : holders) {
        String text = holder.path("properties").path(key).path("description").asText("");
        if (!text.isEmpty()) {
          return phrase(text);
        }
      }
      return "";
    }

    /** What the value should be, such as {@code a day: year, month, day}. */
    String what() {
      return phrase(holders.get(holders.size() - 1).path("description").asText("what it must be"));
    }

    /** How the value may be written. */
    String write() {
      for (JsonNode holder : holders) {
        JsonNode example = holder.path("examples").path(0);
        if (!example.isMissingNode()) {
          return "write it such as " + example;
        }
      }
      String text = holders.get(0).path("description").asText("");
      return text.isEmpty() ? "see rules/README.md" : phrase(text);
    }

    private static String phrase(String text) {
      String plain = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
      return plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
    }
  }

  /** Follows the path of an error through the schema. */
  Spot spot(NodePath path) {
    List<JsonNode> holders = new ArrayList<>(List.of(root));
    JsonNode at = root;
    String before = "";
    List<String> steps = Pointers.steps(path);
    for (String step : steps.subList(0, Math.max(0, steps.size() - 1))) {
      if (step.equals("$ref")) {
        at = root.at(at.path("$ref").asText().substring(1));
      } else {
        at = at.isArray() ? at.path(Integer.parseInt(step)) : at.path(step);
      }
      // A new value begins at a property, an item, a further property.
      if (before.equals("properties") || DOWN.contains(step)) {
        holders.clear();
      }
      if (at.isObject() && !step.equals("properties")) {
        holders.add(at);
      }
      before = before.equals("properties") ? "" : step;
    }
    if (holders.isEmpty()) {
      holders.add(root);
    }
    JsonNode keyword = steps.isEmpty() ? at : at.path(steps.get(steps.size() - 1));
    return new Spot(List.copyOf(holders), keyword);
  }
}
