package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * The entries of a record on which each rule's outcome may depend: its own and those of the rules
 * of its subject, what depths are measured from, what the form covers and which pack judges. Where
 * none of them changed between two runs, a finding came or went by the rules, the day or the
 * program.
 */
final class OwnEntries {
  private static final List<String> ALWAYS = List.of("record.covers", PackChoice.ENTRY);
  private static final List<String> OF_DEPTHS =
      List.of("record.datum", "water.datum", "pump.datum", "well.stickup", "pitless.depth");

  private final List<int[][]> byPack = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();

  OwnEntries(List<Pack> packs) {
    for (int p = 0; p < packs.size(); p++) {
      List<Rule> rules = packs.get(p).rules();
      int[][] entries = new int[rules.size()][];
      for (int i = 0; i < entries.length; i++) {
        entries[i] = entries(rules.get(i), rules);
        places.put(name(packs.get(p).id(), rules.get(i).id()), (p << 16) | i);
      }
      byPack.add(entries);
    }
  }

  private static int[] entries(Rule rule, List<Rule> rules) {
    TreeSet<Integer> all = new TreeSet<>();
    boolean depths = false;
    for (Rule other : rules) {
      boolean same = !rule.subject().isEmpty() && rule.subject().equals(other.subject());
      if (other.id().equals(rule.id()) || same) {
        for (Entry entry : other.program().reads()) {
          all.add(entry.index());
          depths |= entry.datum().isMovable();
        }
      }
    }
    ALWAYS.forEach(key -> all.add(Catalogue.standard().index(key)));
    if (depths) {
      OF_DEPTHS.forEach(key -> all.add(Catalogue.standard().index(key)));
    }
    return all.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The place of a rule of this name, for {@link #mark(WellRecord, int)}; -1 if there is none. */
  int place(String pack, String rule) {
    return places.getOrDefault(name(pack, rule), -1);
  }

  /** The place of the pack of a rule at this place. */
  static int pack(int place) {
    return place >> 16;
  }

  /** The place of a rule in its pack. */
  static int rule(int place) {
    return place & 0xFFFF;
  }

  /** The mark of what a record has in the entries of a rule. */
  long mark(WellRecord record, int place) {
    return RecordMark.ofEntries(record, byPack.get(pack(place))[rule(place)]);
  }

  private static String name(String pack, String rule) {
    return pack + "\n" + rule;
  }
}
