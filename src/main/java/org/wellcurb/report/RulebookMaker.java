package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.report.RulebookPage.Chapter;
import org.wellcurb.report.RulebookPage.Counts;
import org.wellcurb.report.RulebookPage.DropPrint;
import org.wellcurb.report.RulebookPage.FileLine;
import org.wellcurb.report.RulebookPage.RulePrint;
import org.wellcurb.report.RulebookPage.SourcePrint;
import org.wellcurb.report.RulebookPage.TablePrint;
import org.wellcurb.report.RulebookPage.Taken;
import org.wellcurb.report.RulebookPage.TakenRule;
import org.wellcurb.report.words.Group;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;
import org.wellcurb.rulepack.Proof;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;
import org.wellcurb.rulepack.TableLacks;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.WorkingCatalogue;

/** Makes a rulebook of a pack. */
final class RulebookMaker {
  private static final Comparator<Rule> BY_SECTION =
      Comparator.comparing(rule -> rule.source().section(), NaturalOrder.OF_SECTIONS);

  private final Pack pack;
  private final Words words;
  private final BothUnits units;
  private final RuleTexts texts;
  private final RuleWords ruleWords;
  private final RulePrints prints;
  private final String unitsShown;

  RulebookMaker(Pack pack, PageStyle style) {
    this.pack = pack;
    words = Words.in(style.language());
    units = new BothUnits(words, style.units());
    texts = new RuleTexts(words);
    ruleWords = new RuleWords(words);
    prints = new RulePrints(pack, words, units);
    unitsShown = "rulebook.units." + style.units().code();
  }

  RulebookPage page() {
    List<Chapter> chapters = chapters();
    List<RulePrint> replaced =
        chapters.stream()
            .flatMap(chapter -> chapter.rules().stream())
            .filter(rule -> !rule.replaces().isEmpty())
            .toList();
    List<FileLine> files = new ArrayList<>();
    for (PackFile file : pack.files()) {
      files.add(0, new FileLine(file.pack(), file.sha256()));
    }
    return new RulebookPage(
        PackLine.of(pack),
        pack.jurisdictions(),
        prints.day(pack.judgedBy()),
        pack.mustApply().stream().map(words::entry).toList(),
        waived(pack.waivable()),
        pack.waivable() == null ? List.of() : pack.waivable(),
        counts(),
        files,
        unitsShown,
        chapters,
        taken(),
        pack.tables().values().stream().map(this::table).toList(),
        figures(),
        sources(),
        pack.drops().stream()
            .map(drop -> new DropPrint(drop.rule(), drop.title(), drop.because(), drop.pack()))
            .toList(),
        replaced);
  }

  private static String waived(@Nullable List<String> waivable) {
    return "rulebook.waived." + (waivable == null ? "any" : waivable.isEmpty() ? "none" : "some");
  }

  private Counts counts() {
    Proof proof = Proof.of(pack);
    return new Counts(
        proof.rules(),
        proof.always(),
        proof.inherited(),
        proof.limits(),
        proof.proved(),
        proof.examples(),
        (int) pack.rules().stream().filter(rule -> isOwn(rule) && isUndated(rule)).count());
  }

  private static boolean isUndated(Rule rule) {
    return rule.program().texts().stream().anyMatch(text -> RulePrints.isUndated(rule, text));
  }

  private boolean isOwn(Rule rule) {
    return rule.pack().equals(pack.id());
  }

  /** Its own rules: those of a section under the text it is from; the others by the work. */
  private List<Chapter> chapters() {
    Map<String, List<Rule>> byText = new TreeMap<>(NaturalOrder.OF_SECTIONS);
    Map<Group, List<Rule>> byWork = new EnumMap<>(Group.class);
    List<Rule> always = new ArrayList<>();
    for (Rule rule : pack.rules()) {
      if (!isOwn(rule)) {
        continue;
      }
      if (RuleWords.isOfMustApply(rule)) {
        always.add(rule);
      } else if (rule.source().section().isEmpty()) {
        byWork.computeIfAbsent(group(rule), key -> new ArrayList<>()).add(rule);
      } else {
        byText.computeIfAbsent(rule.source().title(), key -> new ArrayList<>()).add(rule);
      }
    }
    List<Chapter> chapters = new ArrayList<>();
    byText.forEach(
        (title, rules) -> {
          rules.sort(BY_SECTION);
          chapters.add(chapter("text-" + (chapters.size() + 1), title, true, rules));
        });
    byWork.forEach(
        (group, rules) ->
            chapters.add(
                chapter(
                    group.heading().replace('.', '-'), words.say(group.heading()), false, rules)));
    if (!always.isEmpty()) {
      chapters.add(chapter(Chapter.ALWAYS, words.say("rulebook.always"), false, always));
    }
    return chapters;
  }

  private Chapter chapter(String id, String title, boolean isOwn, List<Rule> rules) {
    return new Chapter(id, title, isOwn, rules.stream().map(prints::rule).toList());
  }

  private List<Taken> taken() {
    Map<String, Map<Group, List<TakenRule>>> packs = new LinkedHashMap<>();
    for (Rule rule : pack.rules()) {
      if (!isOwn(rule)) {
        packs
            .computeIfAbsent(rule.pack(), key -> new EnumMap<>(Group.class))
            .computeIfAbsent(group(rule), key -> new ArrayList<>())
            .add(
                new TakenRule(
                    rule.id(), ruleWords.title(rule), rule.kind().label(), texts.of(rule)));
      }
    }
    List<Taken> taken = new ArrayList<>();
    packs.forEach(
        (from, groups) ->
            groups.forEach((group, rules) -> taken.add(new Taken(from, group.heading(), rules))));
    return taken;
  }

  /** The part of the work of the first entry that its last text reads. */
  private static Group group(Rule rule) {
    List<DatedText> texts = rule.program().texts();
    @Nullable Formula require = texts.get(texts.size() - 1).require();
    if (require == null) {
      require = rule.program().when();
    }
    if (require == null) {
      return Group.PAPER;
    }
    for (Entry entry : require.reads()) {
      return Group.of(entry.key());
    }
    return Group.PAPER;
  }

  private TablePrint table(Table table) {
    List<List<String>> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < row.cells().size(); i++) {
        @Nullable Unit unit = table.by().get(i).usUnit();
        cells.add(units.cell(row.cells().get(i), unit == null ? Units.ONE : unit));
      }
      cells.add(units.value(row.value()));
      rows.add(cells);
    }
    @Nullable Source source = pack.sources().get(table.source());
    List<String> lacks = TableLacks.of(table).stream().map(lack -> lack(table, lack)).toList();
    return new TablePrint(
        table.name(),
        table.title(),
        source == null ? new SourceLine("", "", "") : SourceLine.of(source, words),
        table.by().stream().map(entry -> words.entry(entry.key())).toList(),
        rows,
        lacks);
  }

  /** Words that a table has no row for, key by key. */
  private String lack(Table table, TableLacks.Lack lack) {
    List<String> keys = new ArrayList<>();
    for (int i = 0; i < table.by().size(); i++) {
      Entry entry = table.by().get(i);
      List<String> some = lack.words().get(i);
      String said;
      if (entry.kind().isAmount()) {
        said = words.say(lack.isAll() ? "rulebook.lacks.any" : "rulebook.lacks.amounts");
      } else if (some.isEmpty()) {
        said = words.say("rulebook.lacks.any");
      } else {
        said = String.join(", ", some.stream().map(this::word).toList());
      }
      keys.add(words.say("given", words.entry(entry.key()), said));
    }
    return String.join("; ", keys);
  }

  private String word(String word) {
    return word.equals(TableLacks.OTHER) ? words.say("rulebook.lacks.other") : words.choice(word);
  }

  /** Figures that the pack sets, or takes over, each with its value. */
  private List<String> figures() {
    List<String> said = new ArrayList<>();
    pack.figures()
        .forEach(
            (name, value) -> {
              @Nullable Figure figure = WorkingCatalogue.standard().figure(name);
              Unit unit = figure == null ? Units.ONE : figure.unit();
              said.add(units.figure(new Expr.FigureAmount(name, value, unit)));
            });
    return said;
  }

  /** Each source with the number of rules that rest on it, be it by one of their dated texts. */
  private List<SourcePrint> sources() {
    Map<String, Integer> uses = new LinkedHashMap<>();
    for (Rule rule : pack.rules()) {
      Set<String> rests = new LinkedHashSet<>();
      rests.add(rule.source().id());
      rule.textSources().forEach(source -> rests.add(source.id()));
      rests.forEach(id -> uses.merge(id, 1, Integer::sum));
    }
    List<SourcePrint> lines = new ArrayList<>();
    for (Source source : ownFirst()) {
      lines.add(
          new SourcePrint(
              source.id(), SourceLine.of(source, words), uses.getOrDefault(source.id(), 0)));
    }
    return lines;
  }

  /** The sources of its own rules, then those of rules taken over. */
  private List<Source> ownFirst() {
    Set<String> own = new LinkedHashSet<>();
    for (Rule rule : pack.rules()) {
      if (isOwn(rule)) {
        own.add(rule.source().id());
        rule.textSources().forEach(source -> own.add(source.id()));
      }
    }
    return pack.sources().values().stream()
        .sorted(Comparator.comparing(source -> !own.contains(source.id())))
        .toList();
  }
}
