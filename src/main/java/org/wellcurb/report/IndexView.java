package org.wellcurb.report;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.drawing.Drawing;

/**
 * What the batch page shows, beside the {@link BatchView} that it is made from.
 *
 * @param batch the run
 * @param steps what to do first
 * @param rules rules that something falls short of, most first
 * @param unknownRules rules that only cannot be told
 * @param quietRules rules that nothing falls short of, and that could be told
 * @param asks what to ask for over the batch: label, outcomes, records
 * @param ruleAsks rules that cannot be told, with what would tell them
 * @param contractors licences, most records with findings first
 * @param grid findings by rule and by contractor
 * @param packs the packs that judged
 * @param sources all sources that the rules name
 * @param cuts what each cap cut, as a sentence, by its name
 * @param outcomes outcomes of all rules on all records, by key of the bundle
 * @param kinds findings by key of the bundle
 * @param troubles columns that were not read as they were meant, as sentences
 * @param reading how the columns of each input were read
 * @param maps where records stand; empty where none gives a position
 * @param cross what only the whole batch shows; null where it was not asked for
 * @param links files that stand beside the page, to be opened
 */
public record IndexView(
    BatchView batch,
    List<Step> steps,
    List<RuleRow> rules,
    List<RuleRow> unknownRules,
    List<RuleRow> quietRules,
    List<AskLine> asks,
    List<RuleAskLine> ruleAsks,
    List<ContractorRow> contractors,
    GridPage grid,
    List<PackLine> packs,
    List<SourceLine> sources,
    Map<String, String> cuts,
    Map<String, Long> outcomes,
    Map<String, Long> kinds,
    List<String> troubles,
    List<ReadingPart> reading,
    List<Drawing> maps,
    @Nullable CrossPage cross,
    List<String> links) {}
