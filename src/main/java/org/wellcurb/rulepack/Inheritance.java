package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Table;

/**
 * What a pack takes over from those that it is built on, in their order. Where two of them define
 * one name differently the pack must define it itself: nothing is chosen in silence.
 */
final class Inheritance {
  final Map<String, Source> sources = new LinkedHashMap<>();
  final Map<String, Table> tables = new LinkedHashMap<>();
  final Map<String, Double> figures = new LinkedHashMap<>();
  final Map<String, Rule> rules = new LinkedHashMap<>();
  final Set<String> mustApply = new LinkedHashSet<>();

  /** What the packs built on let a variance waive; null where none of them says. */
  @Nullable Set<String> waivable;

  final Set<String> ancestors = new LinkedHashSet<>();
  final Set<String> ruleIds = new LinkedHashSet<>();
  final Set<String> sourceIds = new LinkedHashSet<>();
  final Set<String> brokenTables = new LinkedHashSet<>();
  final List<Drop> drops = new ArrayList<>();
  final List<PackFile> files = new ArrayList<>();
  final List<PackProblem> problems = new ArrayList<>();

  /** True where a pack that it is built on cannot be found or read: what it has is not known. */
  boolean isCutShort;

  /** Names that two packs define differently: {@code rule NAME}, {@code table NAME}, ... */
  private final Map<String, Json> disputed = new LinkedHashMap<>();

  /** Takes over what one pack has. */
  void add(Json at, Loaded base) {
    Pack pack = base.pack();
    isCutShort |= pack.id().isEmpty();
    take(at, "source", pack.sources(), sources);
    take(at, "table", pack.tables(), tables);
    take(at, "figure", pack.figures(), figures);
    Map<String, Rule> byId = new LinkedHashMap<>();
    pack.rules().forEach(rule -> byId.put(rule.id(), rule));
    take(at, "rule", byId, rules);
    mustApply.addAll(pack.mustApply());
    if (pack.waivable() != null) {
      Set<String> all = waivable == null ? new LinkedHashSet<>() : waivable;
      all.addAll(pack.waivable());
      waivable = all;
    }
    ancestors.addAll(base.ancestors());
    ruleIds.addAll(base.ruleIds());
    sourceIds.addAll(base.sourceIds());
    brokenTables.addAll(base.brokenTables());
    for (Drop drop : pack.drops()) {
      if (!drops.contains(drop)) {
        drops.add(drop);
      }
    }
    for (PackFile file : pack.files()) {
      if (!files.contains(file)) {
        files.add(file);
      }
    }
    for (PackProblem problem : base.problems()) {
      if (!problems.contains(problem)) {
        problems.add(problem);
      }
    }
  }

  private <T> void take(Json at, String what, Map<String, T> from, Map<String, T> into) {
    from.forEach(
        (name, value) -> {
          T earlier = into.putIfAbsent(name, value);
          if (earlier != null && !earlier.equals(value)) {
            disputed.put(what + " " + name, at);
          }
        });
  }

  /** The pack itself defines or drops this, so that it does not matter who else does. */
  void settle(String what, String name) {
    disputed.remove(what + " " + name);
  }

  /** Refuses what two packs define differently and this one does not settle. */
  void refuseDisputes(Problems own) {
    disputed.forEach(
        (name, at) -> {
          // A rule keeps the source that it was written with, whatever others call the same.
          if (!name.startsWith("source ")) {
            own.at(
                at,
                "two of the packs built on define " + name + " differently",
                name.startsWith("rule ") ? "write it here, or drop it" : "write it here");
          }
        });
  }
}
