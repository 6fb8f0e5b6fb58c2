package org.wellcurb.report;

import java.util.List;

/**
 * A pack as a printable rulebook: its own rules by section of the code, then what it takes over.
 *
 * @param pack the pack
 * @param jurisdictions codes that it judges
 * @param judgedBy which day decides the text in force
 * @param mustApply entries that always apply, as pages call them
 * @param waived key of what the page says of variances
 * @param waivable ids of the rules that a variance may waive, where the pack lists them
 * @param counts what there is of it
 * @param files the files that it was read from, its own first
 * @param units key of what the page says of its figures
 * @param chapters its own rules
 * @param taken rules taken over, by pack and part of the work
 * @param tables its tables
 * @param figures figures that it sets, in words
 * @param sources its sources
 * @param drops rules dropped: rule, why, by which pack
 * @param replaced rules that replace one of a pack built on
 */
public record RulebookPage(
    PackLine pack,
    List<String> jurisdictions,
    String judgedBy,
    List<String> mustApply,
    String waived,
    List<String> waivable,
    Counts counts,
    List<FileLine> files,
    String units,
    List<Chapter> chapters,
    List<Taken> taken,
    List<TablePrint> tables,
    List<String> figures,
    List<SourcePrint> sources,
    List<DropPrint> drops,
    List<RulePrint> replaced) {

  /**
   * What there is of a pack.
   *
   * @param rules rules of its own
   * @param always entries that it says always apply
   * @param taken rules taken over
   * @param limits limits that its own rules state, each row of a table among them
   * @param proved how many of these have an example on both sides
   * @param examples worked examples of its own rules
   * @param undated rules of its own whose first day nobody read
   */
  public record Counts(
      int rules, int always, int taken, int limits, int proved, int examples, int undated) {}

  /**
   * A file that a pack was read from.
   *
   * @param pack id of the pack in it
   * @param sha256 hash of its bytes
   */
  public record FileLine(String pack, String sha256) {}

  /**
   * Rules of the pack that stand together.
   *
   * @param id name of its place on the page
   * @param title the title of the text that they are from, or the part of the work
   * @param isOwn true where the title is the pack's word
   * @param rules the rules, by section
   */
  public record Chapter(String id, String title, boolean isOwn, List<RulePrint> rules) {
    /** Name of the place of what comes with entries that always apply: no rule of the code. */
    public static final String ALWAYS = "always";

    /** True where the code wrote the rules, so that they are among those that are signed. */
    public boolean isWritten() {
      return !id.equals(ALWAYS);
    }
  }

  /**
   * Rules taken over from one pack on one part of the work.
   *
   * @param pack id of that pack
   * @param heading key of the part of the work
   * @param rules the rules, in the pack's order
   */
  public record Taken(String pack, String heading, List<TakenRule> rules) {}

  /**
   * A rule taken over, in short.
   *
   * @param id its id
   * @param title what it asks
   * @param kind kind of finding, in lower case
   * @param asks its texts in one line, with where they apply
   */
  public record TakenRule(String id, String title, String kind, String asks) {}

  /**
   * One rule.
   *
   * @param id its id
   * @param title what it asks
   * @param kind kind of finding, in lower case
   * @param section where it is written; may be empty
   * @param replaces id of the pack whose rule it replaces; may be empty
   * @param replacesBecause why it does; may be empty
   * @param subject rules of one subject stand once; may be empty
   * @param when when it applies, as a sentence; empty if always
   * @param judgedBy which day decides, where the rule has its own; else empty
   * @param texts its texts, by date
   * @param ask what a person has to judge; may be empty
   * @param because why it matters
   * @param remedy how to put it right
   * @param atOnce what must be done before; may be empty
   * @param examples its examples
   * @param tables names of the tables that it reads
   */
  public record RulePrint(
      String id,
      String title,
      String kind,
      String section,
      String replaces,
      String replacesBecause,
      String subject,
      String when,
      String judgedBy,
      List<TextPrint> texts,
      String ask,
      String because,
      String remedy,
      String atOnce,
      List<ExamplePrint> examples,
      List<String> tables) {}

  /**
   * One text of a rule.
   *
   * @param days on which days it is in force; empty if always
   * @param when when it applies beyond the rule's condition; empty if always
   * @param sentences the requirement, with limits in both unit systems
   * @param source where it is written; no text where it is that of the text before
   * @param noteUnder id of the rule under which the note of that source stands; empty where it is
   *     here, or there is none
   */
  public record TextPrint(
      String days, String when, List<String> sentences, SourceLine source, String noteUnder) {}

  /**
   * An example.
   *
   * @param given what the form says, such as {@code Static water level: 40 ft}
   * @param expect key of the outcome expected
   */
  public record ExamplePrint(List<String> given, String expect) {}

  /**
   * A table of limits.
   *
   * @param name its name
   * @param title what the pack calls it; may be empty
   * @param source where it is written; no text where that is not said
   * @param by entries that choose the row
   * @param rows cells in words, the value last
   * @param lacks what it has no row for, in words
   */
  public record TablePrint(
      String name,
      String title,
      SourceLine source,
      List<String> by,
      List<List<String>> rows,
      List<String> lacks) {}

  /**
   * A source.
   *
   * @param id what the pack calls it
   * @param line the source
   * @param rules how many rules rest on it
   */
  public record SourcePrint(String id, SourceLine line, int rules) {}

  /**
   * A rule dropped.
   *
   * @param rule its id
   * @param title what it asked; empty where no pack built on had it any more
   * @param because why
   * @param pack id of the pack that drops it
   */
  public record DropPrint(String rule, String title, String because, String pack) {}
}
