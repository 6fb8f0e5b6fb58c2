package org.wellcurb.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.wellcurb.quantity.Unit;

/**
 * The JSON Schema (2020-12) of a record, made from the catalogue.
 *
 * <p>It says how a record is built, not what may be written in it: a choice that the catalogue
 * lacks or an amount that cannot be read makes one entry unreadable, not the record. Names that no
 * entry has are allowed, kept and reported. {@code null} is a blank.
 */
public final class RecordSchema {
  /** Something else than blanks and characters that do not show. */
  private static final String SOMETHING = "[^\\s\\p{Z}\\p{Cc}\\p{Cf}]";

  private final ObjectMapper json = new ObjectMapper();
  private final Catalogue catalogue;

  private RecordSchema(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The schema as text, indented, ending in a line break. */
  public static String text(Catalogue catalogue) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withArrayEmptySeparator(""))
            .withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try {
      ObjectNode schema = new RecordSchema(catalogue).schema();
      return new ObjectMapper().writer(printer).writeValueAsString(schema) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode schema() {
    ObjectNode root = json.createObjectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("$id", "https://wellcurb.example/schema/record.schema.json");
    root.put("title", "As-built record of a private water well");
    root.put(
        "description",
        "Bare numbers are in the units of record.units. Names that are not listed here are kept and"
            + " reported. null is a blank. A name that stands twice in an object is refused.");
    root.put("type", "object");
    root.putArray("required").add("record");
    ObjectNode properties = root.putObject("properties");
    for (Entry entry : catalogue.entries()) {
      place(properties, entry);
    }
    properties.set("setbacks", setbacks());
    ((ObjectNode) properties.get("record")).putArray("required").add("id");
    return root;
  }

  /** Puts an entry under the objects that the dots of its key name. */
  private void place(ObjectNode properties, Entry entry) {
    String[] names = entry.key().split("\\.", -1);
    ObjectNode at = properties;
    for (int i = 0; i < names.length - 1; i++) {
      if (!at.has(names[i])) {
        object(at.putObject(names[i]), names[i]).putObject("properties");
      }
      at = (ObjectNode) at.get(names[i]).get("properties");
    }
    at.set(names[names.length - 1], value(entry));
  }

  /** Only the object that holds the number of the record cannot be left blank. */
  private static ObjectNode object(ObjectNode node, String name) {
    if (name.equals("record")) {
      return node.put("type", "object");
    }
    types(node, "object", "null");
    return node;
  }

  private ObjectNode value(Entry entry) {
    if (entry.index() == 0) {
      ObjectNode id = described(entry);
      types(id, "string", "number");
      id.put("pattern", SOMETHING);
      return id;
    }
    ObjectNode node = described(entry);
    switch (entry.kind()) {
      case YES_NO -> types(node, "boolean", "string", "null");
      case LIST -> list(node, entry);
      default -> types(node, "string", "number", "null");
    }
    if (!entry.choices().isEmpty()) {
      ArrayNode examples = node.putArray("examples");
      entry.choices().forEach(examples::add);
    }
    return node;
  }

  private ObjectNode described(Entry entry) {
    ObjectNode node = json.createObjectNode();
    Unit us = entry.usUnit();
    Unit metric = entry.metricUnit();
    StringBuilder text = new StringBuilder(entry.meaning());
    if (us != null && metric != null && !us.symbol().isEmpty()) {
      String units =
          us.equals(metric) ? us.symbol() : us.symbol() + ", or metric " + metric.symbol();
      text.append(text.isEmpty() ? "" : "; ").append("a bare number is in ").append(units);
    }
    return text.isEmpty() ? node : node.put("description", text.toString());
  }

  private static void list(ObjectNode node, Entry entry) {
    types(node, "array", "null");
    if (entry.key().equals("layers")) {
      items(node, List.of("from", "to"), List.of("material"));
    } else {
      ((ArrayNode) node.get("type")).add("string");
      node.putObject("items").put("type", "string");
    }
  }

  private ObjectNode setbacks() {
    ObjectNode node = json.createObjectNode();
    node.put(
        "description",
        "Distances from the well, as a list: from names one of the entries under setback.");
    types(node, "array", "null");
    items(node, List.of("distance"), List.of("from"));
    return node;
  }

  private static void items(ObjectNode node, List<String> amounts, List<String> texts) {
    ObjectNode item = node.putObject("items").put("type", "object");
    ObjectNode properties = item.putObject("properties");
    for (String amount : amounts) {
      types(properties.putObject(amount), "string", "number", "null");
    }
    for (String text : texts) {
      types(properties.putObject(text), "string", "null");
    }
  }

  private static void types(ObjectNode node, String... names) {
    ArrayNode types = node.putArray("type");
    for (String name : names) {
      types.add(name);
    }
  }
}
