package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.drawing.Limit;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/**
 * The limit of each entry that a rule compares as it stands: the one that it falls short of; else
 * the greatest of those that it must reach.
 */
final class DrawnLimits {
  private final RecordResult result;
  private final Speech speech;
  private final Words words;
  private final Map<String, Limit> limits = new LinkedHashMap<>();

  DrawnLimits(RecordResult result, Speech speech, Words words) {
    this.words = words;
    this.result = result;
    this.speech = speech;
  }

  Map<String, Limit> all() {
    for (RuleResult each : result.results()) {
      if (each.outcome() != Outcome.NOT_APPLICABLE && isLimit(each.rule())) {
        reached(each);
      }
    }
    for (Finding each : result.findings()) {
      limits.remove(each.deciding().entry());
    }
    for (RuleResult each : result.results()) {
      // Where a rule that can be met in several ways falls short, none of them is the limit.
      if (each.outcome() == Outcome.FALLS_SHORT && isLimit(each.rule())) {
        setbacks(each);
      }
    }
    for (Finding each : result.findings()) {
      Deciding deciding = each.deciding();
      if (isLimit(each.rule()) && !limits.containsKey(deciding.entry())) {
        @Nullable Limit limit = decided(each.rule(), deciding, explained(each));
        if (limit != null) {
          limits.put(deciding.entry(), limit);
        }
      }
    }
    return limits;
  }

  private Explanation explained(Finding finding) {
    return result.results().stream()
        .filter(each -> each.rule().id().equals(finding.rule().id()))
        .findFirst()
        .orElseThrow()
        .explanation();
  }

  /** What contradicts another entry has no limit; nor has what may have been meant otherwise. */
  private boolean isLimit(Rule rule) {
    return rule.kind() != FindingKind.DISCREPANCY
        && result.readings().stream()
            .noneMatch(reading -> rule.required().stream().anyMatch(reading::changes));
  }

  private void reached(RuleResult of) {
    @Nullable Deciding deciding = of.explanation().deciding();
    if (deciding != null && isToBeReached(deciding)) {
      @Nullable Limit limit = decided(of.rule(), deciding, of.explanation());
      if (limit != null) {
        add(of, deciding.entry(), limit);
      }
    }
    setbacks(of);
  }

  /** Distances that a rule limits beside what decided it. */
  private void setbacks(RuleResult of) {
    if (!of.explanation().mayBind().isEmpty()) {
      ofEachText(of);
      return;
    }
    @Nullable Formula require = of.rule().program().texts().get(of.explanation().text()).require();
    if (require == null) {
      return;
    }
    for (Entry entry : require.reads()) {
      if (entry.key().startsWith("setback.")) {
        @Nullable Limit limit = ways(entry).of(require.tree());
        boolean isTold = !isOther(of, entry) && !hasOr(require.tree());
        if (limit != null && !isTold) {
          add(of, entry.key(), limit);
        }
      }
    }
  }

  /** A limit that holds only if its rule applies says so where that cannot be told. */
  private void add(RuleResult of, String entry, Limit limit) {
    Limit shown = of.explanation().mayNotApply() ? open(limit) : limit;
    limits.merge(entry, shown, DrawnLimits::farther);
  }

  private Limit open(Limit limit) {
    if (!limit.requirement().isEmpty()) {
      return Limit.said(words.say("limit.open.said", limit.requirement()));
    }
    if (limit.ways().isEmpty()) {
      return limit.open(List.of(new Limit.Way(limit.si(), words.say("limit.open"))));
    }
    return limit.open(
        limit.ways().stream().map(way -> new Limit.Way(way.si(), open(way.where()))).toList());
  }

  private String open(String where) {
    return where.isEmpty() ? words.say("limit.open") : words.say("limit.open.also", where);
  }

  /** The distances of all texts that may bind: none of them alone is the limit. */
  private void ofEachText(RuleResult of) {
    Set<Entry> distances = new LinkedHashSet<>();
    for (int place : of.explanation().mayBind()) {
      @Nullable Formula require = of.rule().program().texts().get(place).require();
      if (require != null) {
        require.reads().stream()
            .filter(entry -> entry.key().startsWith("setback."))
            .forEach(distances::add);
      }
    }
    for (Entry entry : distances) {
      @Nullable Limit limit = mayBind(of.rule(), of.explanation(), entry);
      if (limit != null) {
        add(of, entry.key(), limit);
      }
    }
  }

  /**
   * The limits of all texts that may bind, each with its days; null where one sets it otherwise
   * than as a least amount.
   */
  private @Nullable Limit mayBind(Rule rule, Explanation why, Entry entry) {
    List<Limit.Way> all = new ArrayList<>();
    Set<Limit> unlike = new LinkedHashSet<>();
    for (int place : why.mayBind()) {
      DatedText text = rule.program().texts().get(place);
      @Nullable Formula require = text.require();
      if (require == null || !require.reads().contains(entry)) {
        all.add(new Limit.Way(Double.NaN, days(text)));
        unlike.add(Limit.of(Double.NaN));
        continue;
      }
      @Nullable Limit limit = ways(entry).of(require.tree());
      if (limit == null) {
        return null;
      }
      if (!limit.requirement().isEmpty()) {
        return asked(rule, why);
      }
      unlike.add(limit);
      if (limit.ways().isEmpty()) {
        all.add(new Limit.Way(limit.si(), days(text)));
      }
      for (Limit.Way way : limit.ways()) {
        String where = way.where().isEmpty() ? days(text) : days(text) + ", " + way.where();
        all.add(new Limit.Way(way.si(), where));
      }
    }
    if (unlike.size() == 1) {
      return unlike.iterator().next();
    }
    all.sort(Comparator.comparingDouble(way -> Double.isNaN(way.si()) ? 1 : -way.si()));
    return Double.isNaN(all.get(0).si()) ? null : Limit.of(all);
  }

  /** What all texts that may bind ask, where it can only be said. */
  private Limit asked(Rule rule, Explanation why) {
    List<String> all = new ArrayList<>();
    for (int place : why.mayBind()) {
      DatedText text = rule.program().texts().get(place);
      @Nullable Formula require = text.require();
      if (require != null) {
        all.add(words.say("limit.text.asks", Sentence.of(require.tree(), speech), days(text)));
      }
    }
    return Limit.said(String.join("; ", all));
  }

  /** When a text binds, in words. */
  private String days(DatedText text) {
    @Nullable LocalDate from = text.from();
    @Nullable LocalDate until = text.until();
    if (from == null) {
      return words.say("limit.text.until", String.valueOf(until));
    }
    return until == null
        ? words.say("limit.text.from", from.toString())
        : words.say("limit.text.from.until", from.toString(), until.toString());
  }

  private static boolean isOther(RuleResult of, Entry entry) {
    @Nullable Deciding deciding = of.explanation().deciding();
    return deciding == null
        || !deciding.entry().equals(entry.key())
        || Double.isNaN(deciding.limit());
  }

  /** Of the limits that two rules set for one entry, the one to draw. */
  static Limit farther(Limit first, Limit next) {
    if (first.isOpen() != next.isOpen()) {
      return beside(first.isOpen() ? first : next, first.isOpen() ? next : first);
    }
    // What cannot be drawn is said all the same.
    return next.si() > first.si() || (Double.isNaN(next.si()) && !Double.isNaN(first.si()))
        ? next
        : first;
  }

  /** A limit that may not bind hides none that does. */
  private static Limit beside(Limit open, Limit certain) {
    if (!(open.si() > certain.si())) {
      return certain;
    }
    List<Limit.Way> all = new ArrayList<>(open.ways());
    all.addAll(
        certain.ways().isEmpty() ? List.of(new Limit.Way(certain.si(), "")) : certain.ways());
    return open.open(all);
  }

  /** True where more is better. */
  private static boolean isToBeReached(Deciding deciding) {
    return (deciding.value() - deciding.limit()) * deciding.margin() >= 0;
  }

  private @Nullable Limit decided(Rule rule, Deciding deciding, Explanation why) {
    @Nullable Unit unit = deciding.unit();
    if (unit == null
        || deciding.entry().isEmpty()
        || !deciding.subject().isEmpty()
        || Double.isNaN(deciding.limit())) {
      return null;
    }
    Catalogue catalogue = result.record().catalogue();
    Entry entry = catalogue.entry(catalogue.index(deciding.entry()));
    @Nullable Limit several = why.mayBind().isEmpty() ? null : mayBind(rule, why, entry);
    if (several != null) {
      return several;
    }
    Limit plain = Limit.of(unit.toSi(deciding.limit()));
    @Nullable Formula require = rule.program().texts().get(why.text()).require();
    if (require == null) {
      return plain;
    }
    Expr.Condition tree = require.tree();
    @Nullable Limit ways = ways(entry).of(tree);
    // A limit that hangs on what the record tells is the one that was told, if it was.
    boolean isTold = !hasOr(tree) && why.outcome() != Outcome.CANNOT_TELL;
    boolean isOneWay = ways != null && ways.isOneWay() && !isTold;
    Limit limit = isOneWay && ways != null ? ways : plain;
    return LimitWays.isFrost(tree, deciding.entry()) ? limit.ofFrost() : limit;
  }

  private static boolean hasOr(Expr expr) {
    return expr instanceof Expr.Or || Parts.of(expr).stream().anyMatch(DrawnLimits::hasOr);
  }

  private LimitWays ways(Entry entry) {
    WellRecord record = result.record();
    @Nullable Unit written = record.unit(entry.index());
    return new LimitWays(entry.key(), written == null ? null : written.system(), speech);
  }
}
