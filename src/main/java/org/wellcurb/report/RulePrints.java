package org.wellcurb.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.RulebookPage.ExamplePrint;
import org.wellcurb.report.RulebookPage.RulePrint;
import org.wellcurb.report.RulebookPage.TextPrint;
import org.wellcurb.report.words.Numerals;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Example;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;

/** Puts the rules of a rulebook into words, one after another. */
final class RulePrints {
  private static final SourceLine NONE = new SourceLine("", "", "");

  private final Pack pack;
  private final Words words;
  private final BothUnits units;
  private final RuleTexts texts;
  private final RuleWords ruleWords;

  /** Under which rule the note of a source was printed: it is said once. */
  private final Map<String, String> noted = new HashMap<>();

  RulePrints(Pack pack, Words words, BothUnits units) {
    this.pack = pack;
    this.words = words;
    this.units = units;
    texts = new RuleTexts(words);
    ruleWords = new RuleWords(words);
  }

  RulePrint rule(Rule rule) {
    @Nullable Formula when = rule.program().when();
    List<TextPrint> prints = new ArrayList<>();
    @Nullable Source before = null;
    for (int i = 0; i < rule.program().texts().size(); i++) {
      Source source = rule.source(i);
      boolean isSame = before != null && before.equals(source);
      prints.add(text(rule, rule.program().texts().get(i), isSame ? null : source));
      before = source;
    }
    boolean ownDay = !rule.program().judgedBy().equals(pack.judgedBy());
    return new RulePrint(
        rule.id(),
        ruleWords.title(rule),
        rule.kind().label(),
        rule.source().section(),
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
        rule.examples().stream().map(this::example).toList(),
        List.copyOf(tables(rule)));
  }

  private TextPrint text(Rule rule, DatedText text, @Nullable Source source) {
    @Nullable Formula require = text.require();
    @Nullable Formula when = text.when();
    SourceLine line =
        source == null || RuleWords.isOfMustApply(rule) ? NONE : SourceLine.of(source, words);
    String under = line.note().isEmpty() ? rule.id() : noted.getOrDefault(line.note(), rule.id());
    if (!line.note().isEmpty()) {
      noted.putIfAbsent(line.note(), rule.id());
    }
    boolean isSaid = !under.equals(rule.id());
    return new TextPrint(
        isUndated(rule, text) && text.knownFrom() == null
            ? words.say("text.undated")
            : texts.days(text),
        when == null ? "" : units.plain(when),
        require == null ? List.of() : units.sentences(require),
        isSaid ? new SourceLine(line.text(), line.address(), "") : line,
        isSaid ? under : "");
  }

  /** Whether a text is published and nobody read since when it has been in force. */
  static boolean isUndated(Rule rule, DatedText text) {
    return text.from() == null
        && text.until() == null
        && text.require() != null
        && rule.source().basis() == Source.Basis.PUBLISHED
        && !(rule.program().judgedBy() instanceof JudgedBy.AsOf);
  }

  /** Names of the tables that a rule reads, in the order in which it does. */
  static Set<String> tables(Rule rule) {
    Set<String> names = new LinkedHashSet<>();
    tables(rule.program().when(), names);
    for (DatedText text : rule.program().texts()) {
      tables(text.when(), names);
      tables(text.require(), names);
    }
    return names;
  }

  private static void tables(@Nullable Formula formula, Set<String> names) {
    if (formula != null) {
      collect(formula.tree(), names);
    }
  }

  private static void collect(Expr expr, Set<String> names) {
    if (expr instanceof Expr.TableAmount amount) {
      names.add(amount.table().name());
    } else if (expr instanceof Expr.TableWord word) {
      names.add(word.table().name());
    } else if (expr instanceof Expr.SameWord same) {
      collect(same.a(), names);
      collect(same.b(), names);
    }
    Parts.of(expr).forEach(part -> collect(part, names));
  }

  /** Which day decides, in words. */
  String day(JudgedBy by) {
    return texts.day(by);
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
    if (text.isBlank()) {
      return words.say("given.blank");
    }
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
}
