package org.wellcurb.rulepack;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Nearest;

/** Says in plain words what the schema refuses, where, and what would mend it. */
final class SchemaWords {
  private static final List<String> WAYS = List.of("require", "inForce", "ask");

  private final SchemaTree schema;
  private final Json root;
  private final Problems problems;

  SchemaWords(JsonNode schema, Json root, Problems problems) {
    this.schema = new SchemaTree(schema);
    this.root = root;
    this.problems = problems;
  }

  void say(Error error) {
    Json at = Pointers.find(root, error.getInstanceLocation());
    SchemaTree.Spot spot = schema.spot(error.getEvaluationPath());
    String property = error.getProperty() == null ? "" : error.getProperty();
    switch (error.getKeyword()) {
      case "required" -> missing(at, property, spot);
      case "additionalProperties" -> unknown(at, property, spot);
      case "propertyNames" -> badName(at, property);
      case "type" ->
          problems.at(
              at,
              at.kind() + " cannot stand here",
              at.pointer().isEmpty()
                  ? "a pack is an object: start it with {"
                  : at instanceof Json.Arr && at.pointer().endsWith("/value")
                      ? "a row gives one value; for either of two words write the one here, and the"
                          + " other in the rule: entry is table(name) or ..."
                      : spot.write());
      case "enum" -> choice(at, spot);
      case "pattern" -> pattern(at, spot);
      case "minItems", "minProperties" ->
          problems.at(at, "too little stands here: at least " + spot.value(), spot.write());
      case "maxProperties" ->
          problems.at(
              at,
              "too many keys stand here: at most " + spot.value(),
              "keep that many and take out the others");
      case "uniqueItems" -> twice(at);
      case "maxLength" ->
          problems.at(at, "this is longer than " + spot.value() + " characters", "shorten it");
      case "oneOf" -> ways(at);
      default -> problems.at(at, error.getMessage(), spot.write());
    }
  }

  private void missing(Json at, String key, SchemaTree.Spot spot) {
    if (isMistyped(at, key, spot.keys())) {
      return;
    }
    String means = spot.meaningOf(key);
    problems.at(
        at,
        "the key \"" + key + "\" is missing",
        "add \"" + key + "\"" + (means.isEmpty() ? "" : ": " + means));
  }

  /** True if another key stands here that must be this one: then that is all there is to say. */
  private static boolean isMistyped(Json at, String key, List<String> keys) {
    return at instanceof Json.Obj object
        && object.members().stream()
            .map(member -> member.key().value())
            .anyMatch(there -> !keys.contains(there) && key.equals(Nearest.of(there, keys)));
  }

  private void unknown(Json at, String key, SchemaTree.Spot spot) {
    Json place = key(at, key);
    List<String> keys = spot.keys();
    String nearest = Nearest.of(key, keys);
    problems.at(
        place,
        "there is no key \"" + key + "\" here",
        nearest != null
            ? "did you mean \"" + nearest + "\"?"
            : "the keys here are " + String.join(", ", keys));
  }

  private void badName(Json at, String key) {
    problems.at(
        key(at, key),
        "\"" + key + "\" cannot be a name",
        "a name has small letters, digits and single dashes; a table's starts with a letter");
  }

  private static Json key(Json at, String key) {
    Json.Text place = at instanceof Json.Obj object ? object.key(key) : null;
    return place == null ? at : place;
  }

  private void choice(Json at, SchemaTree.Spot spot) {
    List<String> choices = spot.list();
    String written = written(at);
    String nearest = Nearest.of(written.toLowerCase(Locale.ROOT), choices);
    // A word that begins otherwise is another one: feet is not meant for text.
    boolean isNear =
        nearest != null
            && !written.isEmpty()
            && (nearest.charAt(0) == Character.toLowerCase(written.charAt(0))
                || Nearest.distance(nearest, written) == 1);
    String dimension = at.pointer().endsWith("/gives") ? dimension(written) : "";
    problems.at(
        at,
        quoted(written) + " is none of the words that may stand here",
        isNear
            ? "did you mean \"" + nearest + "\"?"
            : choices.contains(dimension)
                ? "write \"" + dimension + "\", of which the amounts are"
                : "one of: " + String.join(", ", choices));
  }

  /** The dimension of a unit, or of what is measured; empty where it is neither. */
  private static String dimension(String written) {
    String of = Units.named(written).map(unit -> unit.dimension().label()).orElse("");
    for (Entry entry : Catalogue.standard().entries()) {
      Dimension measured = entry.kind().dimension();
      boolean isSo = entry.key().endsWith("." + written) || entry.key().endsWith("_" + written);
      if (of.isEmpty() && measured != null && isSo) {
        of = measured.label();
      }
    }
    return of;
  }

  private void pattern(Json at, SchemaTree.Spot spot) {
    String written = written(at);
    problems.at(
        at,
        written.isBlank() ? "nothing is written here" : quoted(written) + " is not " + spot.what(),
        spot.write());
  }

  private void twice(Json at) {
    List<String> seen = new ArrayList<>();
    if (at instanceof Json.Arr list) {
      for (Json item : list.items()) {
        if (seen.contains(written(item))) {
          problems.at(item, quoted(written(item)) + " stands twice", "keep one of them");
          return;
        }
        seen.add(written(item));
      }
    }
    problems.at(at, "something stands twice", "keep one of them");
  }

  private void ways(Json at) {
    List<String> there = new ArrayList<>();
    if (at instanceof Json.Obj rule) {
      WAYS.stream().filter(way -> rule.key(way) != null).forEach(there::add);
    }
    if (there.isEmpty()) {
      problems.at(
          at,
          "the rule does not say what it requires",
          "add \"require\" (or \"inForce\" for dated texts, or \"ask\" for what only a person can"
              + " judge)");
    } else {
      Json second = key(at, there.get(1));
      problems.at(second, "the rule has " + String.join(" and ", there), "keep one of them");
    }
  }

  private static String written(@Nullable Json json) {
    return json instanceof Json.Text text
        ? text.value()
        : json instanceof Json.Num number
            ? number.value()
            : json instanceof Json.Word word ? word.value() : "";
  }

  private static String quoted(String text) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
    return "\"" + shown + "\"";
  }
}
