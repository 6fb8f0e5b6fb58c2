package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/** The texts of a rule, each with its days, as pages print them. */
final class RuleTexts {
  private final Words words;
  private final BothUnits units;

  RuleTexts(Words words) {
    this.words = words;
    units = new BothUnits(words);
  }

  /** All that a pack's rule of this id asks, in one line; empty where it has no such rule. */
  String of(Pack pack, String id) {
    for (Rule rule : pack.rules()) {
      if (rule.id().equals(id)) {
        return of(rule);
      }
    }
    return "";
  }

  /** All that a rule asks, in one line. */
  String of(Rule rule) {
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
    return String.join("; ", texts);
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
