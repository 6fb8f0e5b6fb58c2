package org.wellcurb.report;

import java.util.List;

/**
 * A pack as a printable rulebook.
 *
 * @param pack the pack
 * @param jurisdictions codes that it judges
 * @param judgedBy which day decides the text in force
 * @param mustApply entries that always apply, as pages call them
 * @param groups rules by the part of the work that they are about
 * @param tables its tables
 * @param sources its sources
 * @param drops rules dropped: rule, why, by which pack
 * @param replaced rules that replace one of a pack built on
 */
public record RulebookPage(
    PackLine pack,
    List<String> jurisdictions,
    String judgedBy,
    List<String> mustApply,
    List<RuleGroup> groups,
    List<TablePrint> tables,
    List<SourcePrint> sources,
    List<DropPrint> drops,
    List<RulePrint> replaced) {

  /**
   * Rules on one part of the work.
   *
   * @param heading key of its heading
   * @param rules the rules, in the pack's order
   */
  public record RuleGroup(String heading, List<RulePrint> rules) {}

  /**
   * One rule.
   *
   * @param id its id
   * @param title what it asks
   * @param kind kind of finding, in lower case
   * @param pack id of the pack that wrote it, where it is inherited; else empty
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
   */
  public record RulePrint(
      String id,
      String title,
      String kind,
      String pack,
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
      List<ExamplePrint> examples) {}

  /**
   * One text of a rule.
   *
   * @param days on which days it is in force; empty if always
   * @param when when it applies beyond the rule's condition; empty if always
   * @param sentences the requirement, with limits in both unit systems
   * @param source where it is written
   */
  public record TextPrint(String days, String when, List<String> sentences, SourceLine source) {}

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
   * @param by entries that choose the row
   * @param rows cells in words, the value last
   */
  public record TablePrint(String name, List<String> by, List<List<String>> rows) {}

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
   * @param because why
   * @param pack id of the pack that drops it
   */
  public record DropPrint(String rule, String because, String pack) {}
}
