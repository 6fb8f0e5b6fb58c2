package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Collects what a proof has to say, with the lines of the file that it is about. */
final class ProofNotes {
  private final Pack pack;
  private final PackText text;
  private final Map<String, Integer> lines = new HashMap<>();
  private final List<Statement> statements = new ArrayList<>();

  ProofNotes(Pack pack) {
    this.pack = pack;
    PackFile own =
        pack.files().isEmpty()
            ? new PackFile(pack.id(), "", "")
            : pack.files().get(pack.files().size() - 1);
    text = PackText.of(pack.id(), own.text());
    Json root = own.text().isEmpty() ? null : JsonReader.read(new Problems(text));
    if (root instanceof Json.Obj object) {
      if (object.get("rules") instanceof Json.Arr rules) {
        rules.items().forEach(rule -> place("rule ", rule));
      }
      keys("source ", object.get("sources"));
      keys("table ", object.get("tables"));
      keys("figure ", object.get("figures"));
    }
  }

  private void place(String what, Json rule) {
    if (rule instanceof Json.Obj object && object.get("id") instanceof Json.Text id) {
      lines.putIfAbsent(what + id.value(), text.line(id.from()));
    }
  }

  private void keys(String what, @Nullable Json json) {
    if (json instanceof Json.Obj object) {
      object.members().forEach(m -> lines.put(what + m.key().value(), text.line(m.key().from())));
    }
  }

  /** The rules that the pack writes itself, in order; not those that {@code mustApply} makes. */
  List<Rule> ownRules() {
    return pack.rules().stream()
        .filter(rule -> rule.pack().equals(pack.id()) && lines.containsKey("rule " + rule.id()))
        .toList();
  }

  /** Names of the sources, tables or figures that the pack writes itself, in order of its lines. */
  List<String> own(String what) {
    return lines.keySet().stream()
        .filter(key -> key.startsWith(what + " "))
        .sorted(java.util.Comparator.<String>comparingInt(lines::get).thenComparing(key -> key))
        .map(key -> key.substring(what.length() + 1))
        .toList();
  }

  /** Says something of a rule, source, table or figure of the pack. */
  void say(Statement.Weight weight, String what, String name, String said) {
    int line = lines.getOrDefault(what + " " + name, 0);
    String about = what.equals("rule") ? name : what + " " + name;
    statements.add(new Statement(weight, pack.id(), line, about, said));
  }

  /** Says something of the whole pack. */
  void sayOfPack(Statement.Weight weight, String said) {
    statements.add(new Statement(weight, pack.id(), 0, "", said));
  }

  List<Statement> list() {
    return List.copyOf(statements);
  }
}
