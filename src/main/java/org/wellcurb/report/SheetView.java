package org.wellcurb.report;

import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.Extra;
import org.wellcurb.report.drawing.Drawing;

/**
 * What a record sheet shows.
 *
 * @param id the record's number
 * @param place input and row
 * @param pack which pack judged it
 * @param asOf as-of date of the run
 * @param askOf whom to ask: the authority of the pack
 * @param elsewhere that the form names a jurisdiction which the pack is not for; may be empty
 * @param steps what to do first
 * @param counts outcomes by key of the bundle, in order
 * @param findings what falls short
 * @param open limits that are not met if their rules apply, which cannot be told
 * @param asks what to ask for, most useful first
 * @param cautions keys of the cautions that apply
 * @param drawings drawings that the record gives enough for
 * @param doubts possible readings, which drawings do not follow
 * @param undrawn what is not drawn, and what it takes
 * @param outcomes all outcomes
 * @param workings what the record's numbers imply
 * @param chlorine whether one of these says how much chlorine to handle
 * @param nearWorkings what they would imply if more were given
 * @param entries entries as written and as read
 * @param variances rules waived
 * @param extras what the source holds that no entry names
 */
public record SheetView(
    String id,
    String place,
    PackLine pack,
    String asOf,
    String askOf,
    String elsewhere,
    List<Step> steps,
    Map<String, Integer> counts,
    List<FindingView> findings,
    List<OpenLimit> open,
    List<AskView> asks,
    List<String> cautions,
    List<Drawing> drawings,
    List<String> doubts,
    List<String> undrawn,
    List<OutcomeGroup> outcomes,
    List<WorkingShown> workings,
    boolean chlorine,
    List<NearWorking> nearWorkings,
    List<EntryTable> entries,
    List<VarianceLine> variances,
    List<Extra> extras) {

  /**
   * A working that lacks something.
   *
   * @param meaning what it is
   * @param lacking what would give it, as pages call the entries
   */
  public record NearWorking(String meaning, List<String> lacking) {}
}
