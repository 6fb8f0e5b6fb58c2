package org.wellcurb.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.drawing.Limit;
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
  private final Map<String, Limit> limits = new LinkedHashMap<>();

  DrawnLimits(RecordResult result, Speech speech) {
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
        @Nullable Limit limit = decided(each.rule(), deciding, textOf(each));
        if (limit != null) {
          limits.put(deciding.entry(), limit);
        }
      }
    }
    return limits;
  }

  private int textOf(Finding finding) {
    for (RuleResult each : result.results()) {
      if (each.rule().id().equals(finding.rule().id())) {
        return each.explanation().text();
      }
    }
    return 0;
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
      @Nullable Limit limit = decided(of.rule(), deciding, of.explanation().text());
      if (limit != null) {
        limits.merge(deciding.entry(), limit, DrawnLimits::farther);
      }
    }
    setbacks(of);
  }

  /** Distances that a rule limits beside what decided it. */
  private void setbacks(RuleResult of) {
    @Nullable Formula require = of.rule().program().texts().get(of.explanation().text()).require();
    if (require == null) {
      return;
    }
    for (Entry entry : require.reads()) {
      if (entry.key().startsWith("setback.")) {
        @Nullable Limit limit = ways(entry).of(require.tree());
        boolean isTold = !isOther(of, entry) && !hasOr(require.tree());
        if (limit != null && !isTold) {
          limits.merge(entry.key(), limit, DrawnLimits::farther);
        }
      }
    }
  }

  private static boolean isOther(RuleResult of, Entry entry) {
    @Nullable Deciding deciding = of.explanation().deciding();
    return deciding == null
        || !deciding.entry().equals(entry.key())
        || Double.isNaN(deciding.limit());
  }

  private static Limit farther(Limit first, Limit next) {
    // What cannot be drawn is said all the same.
    return next.si() > first.si() || (Double.isNaN(next.si()) && !Double.isNaN(first.si()))
        ? next
        : first;
  }

  /** True where more is better. */
  private static boolean isToBeReached(Deciding deciding) {
    return (deciding.value() - deciding.limit()) * deciding.margin() >= 0;
  }

  private @Nullable Limit decided(Rule rule, Deciding deciding, int text) {
    @Nullable Unit unit = deciding.unit();
    if (unit == null
        || deciding.entry().isEmpty()
        || !deciding.subject().isEmpty()
        || Double.isNaN(deciding.limit())) {
      return null;
    }
    Limit plain = Limit.of(unit.toSi(deciding.limit()));
    @Nullable Formula require = rule.program().texts().get(text).require();
    if (require == null) {
      return plain;
    }
    Expr.Condition tree = require.tree();
    Catalogue catalogue = result.record().catalogue();
    @Nullable Limit ways = ways(catalogue.entry(catalogue.index(deciding.entry()))).of(tree);
    // A limit that hangs on what the record tells is the one that was told.
    boolean isOneWay = ways != null && ways.isOneWay() && hasOr(tree);
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
