package org.wellcurb.report;

import java.util.List;
import java.util.Map;

/**
 * What the desk shows.
 *
 * @param groups the form, in the order in which the work goes
 * @param packs the packs that judge
 * @param known by key of an entry of free text, the words that the packs know
 * @param token what the page must send back with what it asks
 * @param most bytes of the largest file that it opens
 * @param mebibytes the same in MiB
 */
public record DeskPage(
    List<BlankPage.FieldGroup> groups,
    List<PackLine> packs,
    Map<String, List<String>> known,
    String token,
    int most,
    int mebibytes) {
  public DeskPage {
    groups = List.copyOf(groups);
    packs = List.copyOf(packs);
    known = Map.copyOf(known);
  }
}
