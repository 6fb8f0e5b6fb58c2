package org.wellcurb.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.RulebookPage.DropPrint;
import org.wellcurb.report.RulebookPage.ExamplePrint;
import org.wellcurb.report.RulebookPage.RuleGroup;
import org.wellcurb.report.RulebookPage.RulePrint;
import org.wellcurb.report.RulebookPage.SourcePrint;
import org.wellcurb.report.RulebookPage.TablePrint;
import org.wellcurb.report.RulebookPage.TextPrint;
import org.wellcurb.report.words.Group;
import org.wellcurb.report.words.Numerals;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Example;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;

/** Makes a rulebook of a pack. */
final class RulebookMaker {
  private final Pack pack;
  private final Words words;
  private final BothUnits units;
  private final RuleTexts texts;
  private final RuleWords ruleWords;

  RulebookMaker(Pack pack, PageStyle style) {
    this.pack = pack;
    words = Words.in(style.language());
    units = new BothUnits(words);
    texts = new RuleTexts(words);
    ruleWords = new RuleWords(words);
  }

  RulebookPage page() {
    List<RulePrint> replaced = new ArrayList<>();
    Map<Group, List<RulePrint>> groups = new EnumMap<>(Group.class);
    for (Rule rule : pack.rules()) {
      RulePrint print = rule(rule);
      groups.computeIfAbsent(group(rule), key -> new ArrayList<>()).add(print);
      if (!rule.replaces().isEmpty()) {
        replaced.add(print);
      }
    }
    return new RulebookPage(
        PackLine.of(pack),
        pack.jurisdictions(),
        day(pack.judgedBy()),
        pack.mustApply().stream().map(words::entry).toList(),
        groups.entrySet().stream()
            .map(each -> new RuleGroup(each.getKey().heading(), each.getValue()))
            .toList(),
        pack.tables().values().stream().map(this::table).toList(),
        sources(),
        pack.drops().stream()
            .map(drop -> new DropPrint(drop.rule(), drop.because(), drop.pack()))
            .toList(),
        replaced);
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

  private RulePrint rule(Rule rule) {
    @Nullable Formula when = rule.program().when();
    List<TextPrint> prints = new ArrayList<>();
    for (int i = 0; i < rule.program().texts().size(); i++) {
      prints.add(text(rule.program().texts().get(i), rule.source(i)));
    }
    boolean ownDay = !rule.program().judgedBy().equals(pack.judgedBy());
    return new RulePrint(
        rule.id(),
        ruleWords.title(rule),
        rule.kind().label(),
        rule.pack().equals(pack.id()) ? "" : rule.pack(),
        rule.replaces(),
        rule.replacesBecause(),
        rule.subject(),
        when == null ? "" : units.plain(when),
        ownDay ? day(rule.program().judgedBy()) : "",
        prints,
        rule.ask(),
        ruleWords.because(rule),
        ruleWords.remedy(rule),
        rule.atOnce(),
        rule.examples().stream().map(this::example).toList());
  }

  private TextPrint text(DatedText text, Source source) {
    @Nullable Formula require = text.require();
    @Nullable Formula when = text.when();
    return new TextPrint(
        texts.days(text),
        when == null ? "" : units.plain(when),
        require == null ? List.of() : units.sentences(require),
        SourceLine.of(source, words));
  }

  private String day(JudgedBy by) {
    if (by instanceof JudgedBy.Entry entry) {
      return words.entry(entry.entry().key());
    }
    if (by instanceof JudgedBy.LaterOf several) {
      return words.say("day.later", days(several.days()));
    }
    if (by instanceof JudgedBy.LessStrictOf several) {
      return words.say("day.milder", days(several.days()));
    }
    return words.say("day.asof");
  }

  private String days(List<JudgedBy> days) {
    return String.join(", ", days.stream().map(this::day).toList());
  }

  private ExamplePrint example(Example example) {
    List<String> given = new ArrayList<>();
    example
        .given()
        .forEach((key, text) -> given.add(words.say("given", words.entry(key), given(key, text))));
    return new ExamplePrint(given, OutcomeGroups.key(example.expect()));
  }

  /** What a form says, in the language of the page: words of a choice, and the decimal sign. */
  private String given(String key, String text) {
    @Nullable Entry entry = Catalogue.standard().find(key);
    if (entry == null || entry.kind() == Kind.TEXT || entry.kind() == Kind.LIST) {
      return text;
    }
    if (text.equalsIgnoreCase("yes") || text.equalsIgnoreCase("no")) {
      return words.say(text.toLowerCase(Locale.ROOT));
    }
    return entry.kind() == Kind.CHOICE
        ? words.choice(text.toLowerCase(Locale.ROOT))
        : Numerals.written(text, words.language());
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
    return new TablePrint(
        table.name(), table.by().stream().map(entry -> words.entry(entry.key())).toList(), rows);
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
    List<SourcePrint> prints = new ArrayList<>();
    for (Source source : pack.sources().values()) {
      prints.add(
          new SourcePrint(
              source.id(), SourceLine.of(source, words), uses.getOrDefault(source.id(), 0)));
    }
    return prints;
  }
}
