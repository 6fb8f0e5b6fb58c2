package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.record.Catalogue;
import org.wellcurb.workings.WorkingCatalogue;

/** Reads the JSON of one pack, with what it takes over from others. */
final class PackReader {
  private final Problems problems;
  private final Shapes shapes;
  private final Catalogue catalogue = Catalogue.standard();

  PackReader(Problems problems) {
    this.problems = problems;
    shapes = new Shapes(problems);
  }

  /** Names of the packs that it is built on, with where they stand. */
  Map<Json, String> builtOn(@Nullable Json root) {
    Map<Json, String> names = new LinkedHashMap<>();
    if (root instanceof Json.Obj object) {
      for (Json item : shapes.distinct(object.get("builtOn"), 0)) {
        String name = shapes.name(item);
        if (name != null) {
          names.put(item, name);
        }
      }
    }
    return names;
  }

  /**
   * The pack, as far as it can be read.
   *
   * @param runExamples whether its examples are run
   */
  Loaded read(
      @Nullable Json root,
      PackBytes bytes,
      Inheritance inherited,
      List<String> builtOn,
      boolean runExamples) {
    Fields fields = shapes.fields(root);
    if (fields == null) {
      return empty(inherited);
    }
    shapes.text(fields.may("$schema"));
    String named = shapes.name(fields.must("pack"));
    String id = named == null ? "" : named;
    String title = fields.mustLine("title");
    String authority = fields.mustLine("authority");
    List<String> jurisdictions = new ArrayList<>();
    for (Json item : shapes.distinct(fields.may("jurisdictions"), 0)) {
      String code = shapes.line(item);
      if (code != null) {
        jurisdictions.add(code);
      }
    }
    LocalDate edition = shapes.date(fields.must("edition"));
    JudgedBy judgedBy = new DayReader(problems, shapes, catalogue).read(fields.must("judgedBy"));
    String notice = fields.line("notice");
    fields.may("builtOn");
    sources(fields.may("sources"), inherited);
    Set<String> ownTables = tables(fields.may("tables"), inherited);
    Map<String, Double> figures =
        new FigureReader(problems, shapes, WorkingCatalogue.standard()).read(fields.may("figures"));
    figures.keySet().forEach(name -> inherited.settle("figure", name));
    boolean anew = !figures.isEmpty() || ownTables.stream().anyMatch(inherited.tables::containsKey);
    inherited.figures.putAll(figures);
    PackContext context =
        new PackContext(
            id,
            edition == null ? LocalDate.EPOCH : edition,
            judgedBy == null ? new JudgedBy.AsOf() : judgedBy,
            new PackScope(inherited.tables, inherited.figures),
            inherited.sources,
            inherited.sourceIds,
            inherited.brokenTables,
            problems,
            shapes);
    // What is wrong by now every rule may hang on: its examples would only say so again.
    boolean isSound = problems.isEmpty() && !inherited.isCutShort;
    OwnRules rules = new OwnRules(context, inherited);
    Json drops = fields.may("drop");
    rules.drop(drops);
    if (anew) {
      Recompiled.all(inherited.rules, context.scope(), problems, fields.object());
    }
    rules.read(fields.must("rules"));
    rules.mustApply(fields.may("mustApply"), fields.may("mustApplySource"));
    rules.waivable(fields.may("waivable"));
    rules.refuseDroppedAndWritten(drops);
    fields.done();
    inherited.refuseDisputes(problems);
    inherited.ruleIds.addAll(rules.ids());
    inherited.ancestors.add(id);
    inherited.files.add(new PackFile(id, bytes.sha256(), problems.text().text(), bytes.french()));
    Pack pack =
        new Pack(
            id,
            title,
            authority,
            jurisdictions,
            context.edition(),
            context.judgedBy(),
            notice,
            builtOn,
            inherited.sources,
            inherited.tables,
            inherited.drops.stream().filter(d -> !inherited.rules.containsKey(d.rule())).toList(),
            List.copyOf(inherited.mustApply),
            inherited.waivable == null ? null : List.copyOf(inherited.waivable),
            inherited.figures,
            List.copyOf(inherited.rules.values()),
            inherited.files);
    if (runExamples
        && isSound
        && inherited.brokenTables.isEmpty()
        && edition != null
        && problems.stumbles().isEmpty()) {
      ExampleCheck.all(pack, rules.read(), problems);
    }
    return loaded(pack, inherited);
  }

  private Loaded empty(Inheritance inherited) {
    Pack nothing =
        new Pack(
            "",
            "",
            "",
            List.of(),
            LocalDate.EPOCH,
            new JudgedBy.AsOf(),
            "",
            List.of(),
            Map.of(),
            Map.of(),
            List.of(),
            List.of(),
            null,
            Map.of(),
            List.of(),
            List.of());
    return loaded(nothing, inherited);
  }

  private static Loaded loaded(Pack pack, Inheritance inherited) {
    return new Loaded(
        pack,
        inherited.ancestors,
        inherited.ruleIds,
        inherited.sourceIds,
        inherited.brokenTables,
        inherited.problems);
  }

  private void sources(@Nullable Json json, Inheritance inherited) {
    SourceReader reader = new SourceReader(problems, shapes);
    for (Json.Member member : members(json)) {
      shapes.name(member.key());
      String name = member.key().value();
      Source source = reader.read(name, member.value());
      inherited.sourceIds.add(name);
      inherited.sources.remove(name);
      if (source != null) {
        inherited.sources.put(name, source);
      }
    }
  }

  /** Reads the tables; gives the names of the pack's own. */
  private Set<String> tables(@Nullable Json json, Inheritance inherited) {
    TableReader reader = new TableReader(problems, shapes, catalogue, inherited.sourceIds);
    Set<String> own = new LinkedHashSet<>();
    for (Json.Member member : members(json)) {
      shapes.word(member.key());
      String name = member.key().value();
      Table table = reader.read(name, member.value());
      inherited.settle("table", name);
      if (table == null) {
        inherited.brokenTables.add(name);
      } else {
        inherited.tables.put(name, table);
        inherited.brokenTables.remove(name);
        own.add(name);
      }
    }
    return own;
  }

  private List<Json.Member> members(@Nullable Json json) {
    if (!(json instanceof Json.Obj object)) {
      if (json != null) {
        problems.stumble(json);
      }
      return List.of();
    }
    return object.members();
  }
}
