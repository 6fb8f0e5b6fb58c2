package org.wellcurb.screening;

import java.util.Arrays;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;

/** Exact counts of outcomes by rule for one pack. Tallies of parts of a batch add up. */
public final class Tally {
  private static final int OUTCOMES = Outcome.values().length;

  private final Pack pack;
  private final long[] counts;
  private final long[] near;
  private long records;

  public Tally(Pack pack) {
    this.pack = pack;
    counts = new long[pack.rules().size() * OUTCOMES];
    near = new long[pack.rules().size()];
  }

  public Pack pack() {
    return pack;
  }

  /** Counts one record: the outcome of each rule, as ordinals, in the pack's order. */
  public void add(byte[] outcomes) {
    records++;
    for (int i = 0; i < counts.length / OUTCOMES; i++) {
      counts[i * OUTCOMES + outcomes[i]]++;
    }
  }

  /** Counts a finding on this rule that is within a hair of the limit. */
  public void addNear(int rule) {
    near[rule]++;
  }

  /** How many records fall short of the rule at this place by no more than a hair. */
  public long near(int rule) {
    return near[rule];
  }

  /** Adds the counts of another part of the batch, judged by the same pack. */
  public void add(Tally other) {
    add(other.carried());
  }

  /** All that is counted, to be carried to where it is added by {@link #add(long[])}. */
  public long[] carried() {
    long[] all = Arrays.copyOf(counts, counts.length + near.length + 1);
    System.arraycopy(near, 0, all, counts.length, near.length);
    all[all.length - 1] = records;
    return all;
  }

  /** Adds what another tally of the same pack, on this machine or another, {@link #carried}. */
  public void add(long[] carried) {
    if (carried.length != counts.length + near.length + 1) {
      throw new IllegalArgumentException("tallies of different packs");
    }
    for (int i = 0; i < counts.length; i++) {
      counts[i] += carried[i];
    }
    for (int i = 0; i < near.length; i++) {
      near[i] += carried[counts.length + i];
    }
    records += carried[carried.length - 1];
  }

  /** How many records had this outcome of the rule at this place. */
  public long count(int rule, Outcome outcome) {
    return counts[rule * OUTCOMES + outcome.ordinal()];
  }

  /** Records counted. */
  public long records() {
    return records;
  }
}
