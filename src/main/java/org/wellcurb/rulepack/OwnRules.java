package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;

/** Reads the rules of a pack and joins them to those that it takes over. */
final class OwnRules {
  private final PackContext pack;
  private final Inheritance inherited;
  private final Set<String> ids = new HashSet<>();
  private final List<RuleReader.At> read = new ArrayList<>();

  OwnRules(PackContext pack, Inheritance inherited) {
    this.pack = pack;
    this.inherited = inherited;
  }

  /** Ids of the pack's own rules, those that could not be read too. */
  Set<String> ids() {
    return ids;
  }

  /** The pack's own rules that could be read. */
  List<RuleReader.At> read() {
    return read;
  }

  /** Reads the rules and puts them in their place. */
  void read(@Nullable Json json) {
    RuleReader reader = new RuleReader(pack);
    Map<String, Json> first = new HashMap<>();
    for (Json item : pack.shapes().items(json, 0)) {
      Json idAt = item instanceof Json.Obj object ? object.get("id") : null;
      if (idAt instanceof Json.Text id) {
        Json earlier = first.putIfAbsent(id.value(), idAt);
        ids.add(id.value());
        inherited.settle("rule", id.value());
        if (earlier != null) {
          pack.problems()
              .at(
                  idAt,
                  "there are two rules " + id.value(),
                  "the first is on line "
                      + pack.problems().text().line(earlier.from())
                      + ": give this one another id");
        }
      }
      RuleReader.At at = reader.read(item);
      if (at != null) {
        read.add(at);
        place(at.rule());
      }
    }
  }

  private void place(Rule rule) {
    Rule before = inherited.rules.get(rule.id());
    boolean replaces = before != null && !before.pack().equals(pack.id());
    inherited.rules.put(
        rule.id(), replaces && before != null ? rule.replacing(before.pack()) : rule);
  }

  /** Reads what does not hold here. */
  void drop(@Nullable Json json) {
    Set<String> dropped = new HashSet<>();
    for (Json item : pack.shapes().items(json, 0)) {
      Fields fields = pack.shapes().fields(item);
      if (fields == null) {
        continue;
      }
      Json ruleAt = fields.must("rule");
      String rule = pack.shapes().name(ruleAt);
      String because = fields.mustLine("because");
      fields.done();
      if (rule == null || ruleAt == null) {
        continue;
      }
      if (!inherited.ruleIds.contains(rule) && !inherited.isCutShort) {
        pack.problems()
            .at(
                ruleAt,
                "no pack that this one is built on has a rule " + rule,
                Mends.nearest(
                    rule, inherited.ruleIds.stream().sorted().toList(), "take the drop away"));
      } else if (!dropped.add(rule)) {
        pack.problems().at(ruleAt, "the rule " + rule + " is dropped twice", "keep one of them");
      }
      inherited.settle("rule", rule);
      Rule before = inherited.rules.remove(rule);
      inherited.mustApply.removeIf(key -> MustApply.id(key).equals(rule));
      inherited.drops.add(new Drop(rule, before == null ? "" : before.title(), because, pack.id()));
    }
  }

  /** A rule is dropped or written here, not both. */
  void refuseDroppedAndWritten(@Nullable Json drops) {
    for (Json item : pack.shapes().items(drops, 0)) {
      Json rule = item instanceof Json.Obj object ? object.get("rule") : null;
      if (rule instanceof Json.Text text && ids.contains(text.value())) {
        pack.problems()
            .at(
                rule,
                "the rule " + text.value() + " is dropped here and written here",
                "a rule of the same id replaces: take the drop away");
      }
    }
  }

  /** Reads which rules a variance may waive; what the packs built on say holds no longer. */
  void waivable(@Nullable Json json) {
    if (json == null) {
      return;
    }
    Set<String> all = new LinkedHashSet<>();
    for (Json item : pack.shapes().distinct(json, 0)) {
      String id = pack.shapes().name(item);
      if (id != null && !inherited.rules.containsKey(id) && !ids.contains(id)) {
        if (!inherited.isCutShort) {
          pack.problems()
              .at(
                  item,
                  "there is no rule " + id + " to waive",
                  Mends.nearest(id, inherited.rules.keySet(), "take it out"));
        }
      } else if (id != null) {
        all.add(id);
      }
    }
    inherited.waivable = all;
  }

  /**
   * Reads the entries that always apply, each with its rule.
   *
   * @param sourceAt the name of the source that says so; null where the pack does not tell
   */
  void mustApply(@Nullable Json json, @Nullable Json sourceAt) {
    @Nullable Source source = pack.source(sourceAt);
    for (Json item : pack.shapes().distinct(json, 0)) {
      String key = pack.shapes().key(item);
      Entry entry = key == null ? null : pack.catalogue().find(key);
      if (key != null && entry == null) {
        pack.problems()
            .at(item, "there is no entry " + key, Mends.nearestKey(pack.catalogue(), key));
      } else if (entry != null && inherited.mustApply.add(entry.key())) {
        Rule rule = MustApply.rule(entry, pack.id(), pack.judgedBy(), pack.scope(), source);
        if (ids.add(rule.id())) {
          inherited.rules.put(rule.id(), rule);
        }
      }
    }
  }
}
