package org.wellcurb.rulepack;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.RuleProgram;

/**
 * One requirement of a pack.
 *
 * @param id its name, unique in the pack
 * @param pack id of the pack that wrote it
 * @param title what it asks, in a few words
 * @param kind kind of finding where a record falls short
 * @param subject rules of one subject stand once, the worst; empty if none
 * @param program when it applies and what it requires, compiled
 * @param because why it matters
 * @param remedy how to put it right
 * @param atOnce what people there must do before anything is put right; empty where that can wait
 * @param source where it is written (that of the latest text, where it has its own)
 * @param textSources source of each dated text, in order
 * @param ask what a person must judge, for a rule that only a person can judge; empty otherwise
 * @param examples its worked examples
 * @param replaces id of the pack whose rule of this id it replaces; empty if none
 * @param replacesBecause why it does; empty where that is not said
 */
public record Rule(
    String id,
    String pack,
    String title,
    FindingKind kind,
    String subject,
    RuleProgram program,
    String because,
    String remedy,
    String atOnce,
    Source source,
    List<Source> textSources,
    String ask,
    List<Example> examples,
    String replaces,
    String replacesBecause) {

  public Rule {
    textSources = List.copyOf(textSources);
    examples = List.copyOf(examples);
  }

  /** By its id: to make ready a hash of all parts takes longer than one run saves by it. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /**
   * Keys of the entries that its texts hold against something, in order; not of where it applies.
   */
  public Set<String> required() {
    Set<String> keys = new LinkedHashSet<>();
    for (DatedText text : program.texts()) {
      @Nullable Formula require = text.require();
      if (require != null) {
        require.reads().forEach(entry -> keys.add(entry.key()));
      }
    }
    return keys;
  }

  /** Whether it asks for one thing before a day and for another after it. */
  public boolean isDated() {
    return program.texts().stream().filter(text -> text.require() != null).count() > 1;
  }

  /** Where one of its texts is written. */
  public Source source(int text) {
    return text < textSources.size() ? textSources.get(text) : source;
  }

  /** The same rule, standing in the place of one that this pack wrote. */
  public Rule replacing(String otherPack) {
    return new Rule(
        id,
        pack,
        title,
        kind,
        subject,
        program,
        because,
        remedy,
        atOnce,
        source,
        textSources,
        ask,
        examples,
        otherPack,
        replacesBecause);
  }

  /** The same rule, compiled anew. */
  Rule with(RuleProgram anew) {
    return new Rule(
        id,
        pack,
        title,
        kind,
        subject,
        anew,
        because,
        remedy,
        atOnce,
        source,
        textSources,
        ask,
        examples,
        replaces,
        replacesBecause);
  }
}
