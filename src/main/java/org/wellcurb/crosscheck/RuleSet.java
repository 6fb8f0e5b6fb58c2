package org.wellcurb.crosscheck;

import java.util.List;

/**
 * The rules of a batch: those of each pack, in its order.
 *
 * @param packs one for each pack, in the order given
 */
public record RuleSet(List<RulesOfPack> packs) {
  /** A batch that was judged by nothing. */
  static final RuleSet NONE = new RuleSet(List.of());

  public RuleSet {
    packs = List.copyOf(packs);
  }

  /**
   * The rules of one pack.
   *
   * @param pack its id
   * @param ids of its rules
   * @param titles of its rules
   * @param isDeficiency whether falling short of it is a deficiency
   * @param isDated whether it asks for one thing before a day and for another after it
   */
  public record RulesOfPack(
      String pack,
      List<String> ids,
      List<String> titles,
      List<Boolean> isDeficiency,
      List<Boolean> isDated) {
    public RulesOfPack {
      ids = List.copyOf(ids);
      titles = List.copyOf(titles);
      isDeficiency = List.copyOf(isDeficiency);
      isDated = List.copyOf(isDated);
    }
  }

  /** Rules of the longest pack. */
  int most() {
    return packs.stream().mapToInt(pack -> pack.ids().size()).max().orElse(0);
  }

  /**
   * Where the rules of each pack begin, if all stood in one row; the last is how many there are.
   */
  int[] starts() {
    int[] starts = new int[packs.size() + 1];
    for (int i = 0; i < packs.size(); i++) {
      starts[i + 1] = starts[i] + packs.get(i).ids().size();
    }
    return starts;
  }
}
