package org.wellcurb.rulepack;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;

/** Reads one rule of a pack. */
final class RuleReader {

  /** A rule and where it and its examples stand. */
  record At(Json.Obj json, Rule rule, List<ExampleReader.At> examples) {}

  private final PackContext pack;
  private final TextsReader texts;
  private final ExampleReader examples;
  private final DayReader days;

  RuleReader(PackContext pack) {
    this.pack = pack;
    texts = new TextsReader(pack);
    examples = new ExampleReader(pack);
    days = new DayReader(pack.problems(), pack.shapes(), pack.catalogue());
  }

  /** The rule; null where it cannot be read. */
  @Nullable At read(Json json) {
    Fields fields = pack.shapes().fields(json);
    if (fields == null) {
      return null;
    }
    String id = pack.shapes().name(fields.must("id"));
    String title = fields.mustLine("title");
    FindingKind kind = kind(fields.must("kind"));
    Json subjectAt = fields.may("subject");
    String subject = pack.shapes().name(subjectAt);
    Json judgedByAt = fields.may("judgedBy");
    JudgedBy judgedBy = judgedByAt == null ? pack.judgedBy() : days.read(judgedByAt);
    String because = fields.mustLine("because");
    String remedy = fields.mustLine("remedy");
    String atOnce = fields.line("atOnce");
    String replacesBecause = fields.line("replacesBecause");
    Source source = pack.source(fields.must("source"));
    Json whenAt = fields.may("when");
    Formula when = pack.formula(whenAt);
    String ask = fields.line("ask");
    List<TextsReader.Text> says = inOrder(says(fields));
    List<ExampleReader.At> proved = examples.read(fields.may("examples"));
    fields.done();
    if (fields.object().get("ask") == null) {
      refuseUnproved(fields.object());
    }
    if (id == null
        || kind == null
        || judgedBy == null
        || source == null
        || (when == null && whenAt != null)
        || says == null) {
      return null;
    }
    Source last = later(source, says.get(says.size() - 1).source());
    Rule rule =
        new Rule(
            id,
            pack.id(),
            title,
            kind,
            subject == null ? "" : subject,
            new RuleProgram(
                when,
                says.stream().map(text -> known(text.text(), last, kind, judgedBy)).toList(),
                judgedBy,
                kind == FindingKind.OMISSION),
            because,
            remedy,
            atOnce,
            last,
            says.stream().map(text -> later(source, text.source())).toList(),
            ask,
            proved.stream().map(ExampleReader.At::example).toList(),
            "",
            replacesBecause);
    return new At(fields.object(), rule, proved);
  }

  /** As the program has them: the earliest first. */
  private static @Nullable List<TextsReader.Text> inOrder(@Nullable List<TextsReader.Text> says) {
    return says == null
        ? null
        : says.stream().sorted(Comparator.comparingDouble(text -> text.text().firstDay())).toList();
  }

  /**
   * A published text without a day is one whose first day nobody read: it is known as of the pack's
   * edition. What only advises, and what is judged as things stand today, needs no first day.
   */
  private DatedText known(DatedText text, Source source, FindingKind kind, JudgedBy judgedBy) {
    boolean isUnread =
        text.from() == null
            && text.until() == null
            && text.require() != null
            && source.basis() == Source.Basis.PUBLISHED
            && kind != FindingKind.ADVISORY
            && !(judgedBy instanceof JudgedBy.AsOf);
    return isUnread ? new DatedText(null, null, text.when(), text.require(), pack.edition()) : text;
  }

  private static Source later(Source rule, @Nullable Source text) {
    return text == null ? rule : text;
  }

  private @Nullable FindingKind kind(@Nullable Json json) {
    if (json instanceof Json.Text text) {
      for (FindingKind kind : FindingKind.values()) {
        if (kind.label().equals(text.value())) {
          return kind;
        }
      }
    }
    if (json != null) {
      pack.problems().stumble(json);
    }
    return null;
  }

  /** What it says, in one text or several; null where that cannot be read. */
  private @Nullable List<TextsReader.Text> says(Fields fields) {
    Json require = fields.may("require");
    Json inForce = fields.may("inForce");
    Json ask = fields.may("ask");
    int ways = (require == null ? 0 : 1) + (inForce == null ? 0 : 1) + (ask == null ? 0 : 1);
    if (ways != 1) {
      pack.problems().stumble(fields.object());
    }
    if (inForce != null) {
      return texts.read(inForce);
    }
    if (require == null) {
      return ask == null
          ? null
          : List.of(new TextsReader.Text(ask, new DatedText(null, null, null, null), null));
    }
    Formula formula = pack.formula(require);
    return formula == null
        ? null
        : List.of(new TextsReader.Text(require, new DatedText(null, null, null, formula), null));
  }

  /** Goes by what is written: an example that cannot be read has an error of its own. */
  private void refuseUnproved(Json.Obj rule) {
    Json place = rule.get("id");
    List<Json> examples = rule.get("examples") instanceof Json.Arr list ? list.items() : List.of();
    for (Outcome outcome : List.of(Outcome.MEETS, Outcome.FALLS_SHORT)) {
      if (examples.stream().noneMatch(json -> mayExpect(json, outcome))) {
        pack.problems()
            .at(
                place == null ? rule : place,
                outcome == Outcome.MEETS
                    ? "the rule has no example that meets it"
                    : "the rule has no example that falls short of it",
                "add one with \"expect\": \"" + outcome.label() + "\" to examples");
      }
    }
  }

  private static boolean mayExpect(Json example, Outcome outcome) {
    Json expect = example instanceof Json.Obj object ? object.get("expect") : null;
    return !(expect instanceof Json.Text text)
        || Arrays.stream(Outcome.values()).noneMatch(o -> o.label().equals(text.value()))
        || outcome.label().equals(text.value());
  }
}
