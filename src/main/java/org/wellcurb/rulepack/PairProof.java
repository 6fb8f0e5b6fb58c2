package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Branches.Branch;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says which rules contradict each other, which are shadowed by another or judge again what one
 * taken over judges, and which texts can never apply, be met or be broken. Only what is proved is
 * said, for records in both unit systems; what cannot be reckoned with is taken to be possible.
 */
final class PairProof {
  private static final List<UnitSystem> SIDES = List.of(UnitSystem.US, UnitSystem.METRIC);

  /** A text of a rule, and what it asks. */
  private record Text(Rule rule, DatedText text, int number) {
    Expr.Condition when() {
      List<Expr.Condition> all = new ArrayList<>();
      add(rule.program().when(), all);
      add(text.when(), all);
      return new Expr.And(all);
    }

    Expr.Condition require() {
      Formula require = text.require();
      return require == null ? new Expr.Constant(true) : require.tree();
    }

    private static void add(@Nullable Formula formula, List<Expr.Condition> into) {
      if (formula != null) {
        into.add(formula.tree());
      }
    }

    String name() {
      return rule.id() + (rule.program().texts().size() > 1 ? " (text " + number + ")" : "");
    }
  }

  /**
   * The ways in which a text applies, applies and is met, applies and is broken, does not apply.
   */
  private record Ways(
      List<Branch> applies, List<Branch> met, List<Branch> broken, List<Branch> outside) {}

  private final ProofNotes notes;
  private final Pack pack;
  private final Map<UnitSystem, Map<Text, Ways>> ways = new HashMap<>();

  /** Own rules, each with one taken over that it doubles, of which something was said. */
  private final Set<String> told = new HashSet<>();

  private PairProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
  }

  static void run(Pack pack, ProofNotes notes) {
    new PairProof(pack, notes).run();
  }

  private void run() {
    List<Text> texts = new ArrayList<>();
    for (Rule rule : pack.rules()) {
      int number = 0;
      for (DatedText text : rule.program().texts()) {
        number++;
        if (text.require() != null) {
          texts.add(new Text(rule, text, number));
        }
      }
    }
    Set<String> own = new HashSet<>();
    notes.ownRules().forEach(rule -> own.add(rule.id()));
    for (UnitSystem side : SIDES) {
      ways.put(side, ways(texts, side));
    }
    for (Text text : texts) {
      if (own.contains(text.rule.id())) {
        alone(text);
      }
    }
    pairs(texts, own);
  }

  private static Map<Text, Ways> ways(List<Text> texts, UnitSystem side) {
    Branches branches = new Branches(side);
    Map<Text, Ways> ways = new HashMap<>();
    for (Text text : texts) {
      try {
        List<Branch> applies = branches.of(text.when(), true);
        List<Branch> met = Branches.and(applies, branches.of(text.require(), true));
        List<Branch> broken = Branches.and(applies, branches.of(text.require(), false));
        ways.put(text, new Ways(applies, met, broken, branches.of(text.when(), false)));
      } catch (Branches.TooMany e) {
        // Too much to reckon with: nothing is said of it.
        ways.remove(text);
      }
    }
    return ways;
  }

  private void alone(Text text) {
    boolean isNever = SIDES.stream().allMatch(side -> is(text, side, w -> w.applies.isEmpty()));
    boolean isNotMet = SIDES.stream().allMatch(side -> is(text, side, w -> w.met.isEmpty()));
    boolean isMet = SIDES.stream().allMatch(side -> is(text, side, w -> w.broken.isEmpty()));
    String said =
        isNever
            ? "its condition can never hold"
            : isNotMet ? "nothing can meet it" : isMet ? "nothing can fall short of it" : "";
    if (!said.isEmpty()) {
      String which = text.rule.program().texts().size() > 1 ? "text " + text.number + ": " : "";
      notes.say(Weight.WRONG, "rule", text.rule.id(), which + said);
    }
  }

  private boolean is(Text text, UnitSystem side, java.util.function.Predicate<Ways> test) {
    Map<Text, Ways> of = ways.get(side);
    Ways found = of == null ? null : of.get(text);
    return found != null && test.test(found);
  }

  private void pairs(List<Text> texts, Set<String> own) {
    Map<Text, Set<Entry>> reads = new HashMap<>();
    texts.forEach(text -> reads.put(text, requireReads(text)));
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        Text a = texts.get(i);
        Text b = texts.get(j);
        boolean isOurs = own.contains(a.rule.id()) || own.contains(b.rule.id());
        if (isOurs
            && !a.rule.id().equals(b.rule.id())
            && meet(a, b)
            && share(reads.get(a), reads.get(b))) {
          pair(a, b, own);
        }
      }
    }
  }

  private static Set<Entry> requireReads(Text text) {
    Formula require = text.text.require();
    return require == null ? Set.of() : require.reads();
  }

  private static boolean share(@Nullable Set<Entry> a, @Nullable Set<Entry> b) {
    return a != null && b != null && a.stream().anyMatch(b::contains);
  }

  /**
   * True if both may be in force for one record. Two days may be one and the same, so that texts
   * judged by different days may both be, if there is a day in both.
   */
  private static boolean meet(Text a, Text b) {
    boolean isDated = a.rule.program().isDated() && b.rule.program().isDated();
    return !isDated
        || (a.text.firstDay() <= b.text.lastDay() && b.text.firstDay() <= a.text.lastDay());
  }

  /** True if it is not one day that decides whether each is in force. */
  private static boolean isByOtherDays(Text a, Text b) {
    return a.rule.program().isDated()
        && b.rule.program().isDated()
        && !a.rule.program().judgedBy().equals(b.rule.program().judgedBy());
  }

  private void pair(Text a, Text b, Set<String> own) {
    boolean isLaterOurs = own.contains(b.rule.id());
    Text last = isLaterOurs ? b : a;
    Text other = isLaterOurs ? a : b;
    if (never(a, b, (x, y) -> Branches.and(x.met, y.met)) && surelyMeet(a, b)) {
      notes.say(
          Weight.WRONG,
          "rule",
          last.rule.id(),
          isByOtherDays(a, b)
              ? "no record can meet both "
                  + last.name()
                  + " and "
                  + other.name()
                  + " where the days that each is judged by are such that both are in force; say"
                  + " when each applies"
              : "no record can meet both " + last.name() + " and " + other.name());
      return;
    }
    if (isByOtherDays(a, b)) {
      return;
    }
    boolean isSubject = !a.rule.subject().isEmpty() && a.rule.subject().equals(b.rule.subject());
    if (a.rule.kind() == b.rule.kind() && !isSubject) {
      boolean isBoth = own.contains(other.rule.id());
      boolean lastInOther = isWithin(last, other);
      boolean otherInLast = isWithin(other, last);
      if (lastInOther || otherInLast) {
        told.add(last.rule.id() + " " + other.rule.id());
        String known = isBoth ? other.name() : other.name() + " of " + other.rule.pack();
        notes.say(
            isBoth ? Weight.WRONG : Weight.DOUBTFUL,
            "rule",
            last.rule.id(),
            (lastInOther && otherInLast
                    ? last.name() + " asks the same as " + known
                    : lastInOther
                        ? "whatever falls short of it falls short of " + known
                        : "whatever falls short of " + known + " falls short of it")
                + mend(other, isBoth));
        return;
      }
    }
    if (!own.contains(other.rule.id()) && !isSubject) {
      doubled(last, other);
    }
  }

  /** An own rule that asks of an entry what one taken over asks of it too: both judge. */
  private void doubled(Text last, Text other) {
    boolean isCheck =
        last.rule.kind() == FindingKind.DISCREPANCY || other.rule.kind() == FindingKind.DISCREPANCY;
    Set<Demand> both = new LinkedHashSet<>(Demand.of(last.require()));
    both.retainAll(Demand.of(other.require()));
    boolean isApart = never(last, other, (x, y) -> Branches.and(x.applies, y.applies));
    if (isCheck || both.isEmpty() || isApart || !told.add(last.rule.id() + " " + other.rule.id())) {
      return;
    }
    notes.say(
        Weight.NOTE,
        "rule",
        last.rule.id(),
        other.rule.id()
            + " of "
            + other.rule.pack()
            + " asks the same way of "
            + both.stream()
                .map(demand -> demand.entry().key())
                .distinct()
                .collect(Collectors.joining(", "))
            + ", and both judge: drop that one (drop: rule, because), or replace it (give this its"
            + " id, and replacesBecause)"
            + (other.rule.subject().isEmpty()
                ? ""
                : ", or give this its subject, " + other.rule.subject())
            + ", unless both are meant");
  }

  /** A rule that was taken over cannot be given a subject here, but dropped or joined. */
  private static String mend(Text other, boolean isBoth) {
    if (isBoth) {
      return "; drop one, or give both one subject";
    }
    String subject = other.rule.subject();
    return "; drop that one (drop: rule, because), or this"
        + (subject.isEmpty() ? "" : ", or give this its subject, " + subject);
  }

  /** True if both apply to some record, for all that is asked of it is about single entries. */
  private boolean surelyMeet(Text a, Text b) {
    Map<Text, Ways> of = ways.get(UnitSystem.US);
    Ways x = of == null ? null : of.get(a);
    Ways y = of == null ? null : of.get(b);
    if (x == null || y == null) {
      return false;
    }
    try {
      return Branches.and(x.applies, y.applies).stream().anyMatch(Branch::isPlain);
    } catch (Branches.TooMany e) {
      return false;
    }
  }

  /** True if whatever breaks the first breaks the second, which is in force whenever it is. */
  private boolean isWithin(Text inner, Text outer) {
    boolean isAlways =
        !outer.rule.program().isDated()
            || (outer.rule.program().judgedBy().equals(inner.rule.program().judgedBy())
                && outer.text.firstDay() <= inner.text.firstDay()
                && outer.text.lastDay() >= inner.text.lastDay());
    return isAlways
        && never(inner, outer, (x, y) -> Branches.and(x.broken, Branches.or(y.outside, y.met)));
  }

  /** What two texts have in common. */
  private interface Both {
    List<Branch> of(Ways a, Ways b) throws Branches.TooMany;
  }

  /** True if it is proved, on both sides of dual limits, that there is no such way. */
  private boolean never(Text a, Text b, Both both) {
    for (UnitSystem side : SIDES) {
      Map<Text, Ways> of = ways.get(side);
      Ways x = of == null ? null : of.get(a);
      Ways y = of == null ? null : of.get(b);
      if (x == null || y == null) {
        return false;
      }
      try {
        if (!both.of(x, y).isEmpty()) {
          return false;
        }
      } catch (Branches.TooMany e) {
        return false;
      }
    }
    return true;
  }
}
