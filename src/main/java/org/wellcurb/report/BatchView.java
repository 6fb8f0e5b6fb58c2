package org.wellcurb.report;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.screening.Tally;

/**
 * A whole run, as the batch page shows it. Counts are exact; lists are bounded by {@link Cap} and
 * must come in the order said here, so that the same input gives the same page.
 *
 * <p>What to put in: the tallies of all workers merged, one for each pack in the order given on the
 * command line (rules, rates, packs and sources are taken from them); the worst records by {@link
 * RecordLine#WORST_FIRST}, kept with a heap of {@link Cap#RECORDS_ON_PAGE}; the contractors by
 * {@link ContractorLine#MOST_FIRST}; a {@link Cut} for each cap that cut something, also the caps
 * on sheets and notices.
 *
 * @param version version of the program
 * @param asOf as-of date of the run
 * @param rowsRead rows met; always {@code screened + setAside}
 * @param screened rows screened
 * @param setAside rows set aside
 * @param withFindings records with at least one finding
 * @param withDeficiency records with at least one deficiency
 * @param findings all findings by kind
 * @param tallies outcomes by rule, one for each pack, in the order of the packs given
 * @param records records with findings, worst first, at most {@link Cap#RECORDS_ON_PAGE}
 * @param contractors licences, most findings first, at most {@link Cap#CONTRACTORS_ON_PAGE}
 * @param asks entries that would settle most of what cannot be told, most useful first; may be
 *     empty where it was not counted
 * @param ruleAsks rules that cannot be told most often, with what would tell them
 * @param grid open findings by rule and by contractor
 * @param setAsideLines rows set aside in input order, at most {@link Cap#SET_ASIDE_ON_PAGE}
 * @param inputs how each input was read, in the order read, at most {@link Cap#INPUTS_ON_PAGE}
 * @param notRead files met in folders that are no records, by path
 * @param maps where records stand, in the order of the tallies
 * @param cross what only the whole batch shows; null where it was not asked for
 * @param elsewhere records judged by the only pack given, which is not for the place that they name
 * @param followUp what the run was told beside the records
 * @param cautions keys of cautions that apply to any record with a sheet
 * @param cuts where a cap cut
 * @param files names of the files written beside the page, in code point order
 */
public record BatchView(
    String version,
    LocalDate asOf,
    long rowsRead,
    long screened,
    long setAside,
    long withFindings,
    long withDeficiency,
    KindCounts findings,
    List<Tally> tallies,
    List<RecordLine> records,
    List<ContractorLine> contractors,
    List<AskLine> asks,
    List<RuleAsk> ruleAsks,
    GridView grid,
    List<SetAsideLine> setAsideLines,
    List<InputLine> inputs,
    List<String> notRead,
    Maps maps,
    @Nullable CrossView cross,
    Elsewhere elsewhere,
    FollowUp followUp,
    List<String> cautions,
    List<Cut> cuts,
    List<String> files) {

  public BatchView {
    tallies = List.copyOf(tallies);
    records = List.copyOf(records);
    contractors = List.copyOf(contractors);
    asks = List.copyOf(asks);
    ruleAsks = List.copyOf(ruleAsks);
    setAsideLines = List.copyOf(setAsideLines);
    inputs = List.copyOf(inputs);
    notRead = List.copyOf(notRead);
    cautions = List.copyOf(cautions);
    cuts = List.copyOf(cuts);
    files = List.copyOf(files);
  }

  /** How many columns were not read, or perhaps not as they were meant. */
  public static int columnsInTrouble(List<InputLine> inputs) {
    return ReadingTrouble.of(inputs).size();
  }
}
