package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;

/** Reads the examples of a rule. */
final class ExampleReader {

  /**
   * An example and where it stands.
   *
   * @param givenAt where each entry's text stands
   * @param expectAt where its outcome stands
   */
  record At(Map<String, Json> givenAt, Json expectAt, Example example) {}

  private final PackContext pack;

  ExampleReader(PackContext pack) {
    this.pack = pack;
  }

  /** The examples that can be read. */
  List<At> read(@Nullable Json json) {
    List<At> examples = new ArrayList<>();
    for (Json item : pack.shapes().items(json, 0)) {
      At example = example(item);
      if (example != null) {
        examples.add(example);
      }
    }
    return examples;
  }

  private @Nullable At example(Json json) {
    Fields fields = pack.shapes().fields(json);
    if (fields == null) {
      return null;
    }
    Map<String, String> given = given(fields.must("given"));
    Json expectAt = fields.must("expect");
    Outcome expect = outcome(expectAt);
    fields.done();
    return given == null || expect == null || expectAt == null
        ? null
        : new At(places(fields.object()), expectAt, new Example(given, expect));
  }

  private static Map<String, Json> places(Json.Obj example) {
    Map<String, Json> places = new LinkedHashMap<>();
    if (example.get("given") instanceof Json.Obj given) {
      given.members().forEach(member -> places.put(member.key().value(), member.value()));
    }
    return places;
  }

  private @Nullable Map<String, String> given(@Nullable Json json) {
    if (!(json instanceof Json.Obj object)) {
      if (json != null) {
        pack.problems().stumble(json);
      }
      return null;
    }
    if (object.members().isEmpty()) {
      pack.problems().stumble(object);
      return null;
    }
    Map<String, String> given = new LinkedHashMap<>();
    boolean isWhole = true;
    for (Json.Member member : object.members()) {
      String key = member.key().value();
      if (pack.catalogue().find(key) == null) {
        isWhole = false;
        pack.problems()
            .at(member.key(), "there is no entry " + key, Mends.nearestKey(pack.catalogue(), key));
      }
      if (member.value() instanceof Json.Text text) {
        given.put(key, text.value());
      } else if (member.value() instanceof Json.Num number) {
        given.put(key, number.value());
      } else {
        isWhole = false;
        pack.problems().stumble(member.value());
      }
    }
    return isWhole ? given : null;
  }

  private @Nullable Outcome outcome(@Nullable Json json) {
    if (json instanceof Json.Text text) {
      for (Outcome outcome : Outcome.values()) {
        if (outcome.label().equals(text.value())) {
          return outcome;
        }
      }
    }
    if (json != null) {
      pack.problems().stumble(json);
    }
    return null;
  }
}
