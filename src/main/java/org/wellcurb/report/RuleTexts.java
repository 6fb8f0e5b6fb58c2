package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;

/** The texts of a rule, each with its days, as pages print them. */
final class RuleTexts {
  private final Words words;
  private final BothUnits units;

  RuleTexts(Words words) {
    this.words = words;
    units = new BothUnits(words);
  }

  /** All that a rule asks, in one line. */
  String of(Rule rule) {
    return String.join("; ", lines(rule));
  }

  /** What a rule asks, a line for each of its texts, with its days and where it applies. */
  List<String> lines(Rule rule) {
    List<String> texts = new ArrayList<>();
    for (DatedText text : rule.program().texts()) {
      @Nullable Formula require = text.require();
      StringBuilder line = new StringBuilder();
      if (text.from() != null || text.until() != null) {
        line.append(days(text)).append(words.say("rehearsal.asks.colon"));
      }
      line.append(require == null ? rule.ask() : units.plain(require));
      when(rule.program().when(), line);
      when(text.when(), line);
      texts.add(line.toString());
    }
    return texts;
  }

  /** Which day decides, in words. */
  String day(JudgedBy by) {
    if (by instanceof JudgedBy.Entry entry) {
      return words.entry(entry.entry().key());
    }
    if (by instanceof JudgedBy.LaterOf several) {
      return words.say("day.later", all(several.days()));
    }
    if (by instanceof JudgedBy.LessStrictOf several) {
      return words.say("day.milder", all(several.days()));
    }
    return words.say("day.asof");
  }

  private String all(List<JudgedBy> days) {
    return String.join(", ", days.stream().map(this::day).toList());
  }

  private void when(@Nullable Formula when, StringBuilder line) {
    if (when != null) {
      line.append(words.say("rehearsal.asks.where", units.plain(when)));
    }
  }

  /** The days on which a text is in force; that its first day was not read; else empty. */
  String days(DatedText text) {
    @Nullable LocalDate from = text.from();
    @Nullable LocalDate until = text.until();
    @Nullable LocalDate known = text.knownFrom();
    if (known != null) {
      return words.say("text.known.from", known);
    }
    if (from == null) {
      return until == null ? "" : words.say("text.until", until);
    }
    return until == null ? words.say("text.since", from) : words.say("text.during", from, until);
  }
}
