package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.wellcurb.record.Catalogue;

/**
 * Records that stand in a batch more than once: under the same number, or nearly word for word
 * under another, as {@link NearCopies} has it.
 */
public final class Duplicates {
  private final SurveyFile survey;
  private final Alike alike;
  private final int most;

  /**
   * @param most groups that are described of each kind; all are counted
   */
  public Duplicates(SurveyFile survey, Catalogue catalogue, int most) {
    this.survey = survey;
    alike = new Alike(catalogue);
    this.most = most;
  }

  /**
   * Records of one number.
   *
   * @param rows on how many rows it stands
   * @param records where they stand, in input order, at most so many
   * @param different keys of entries in which they differ; empty where they say the same
   */
  public record SameNumber(int rows, List<Seen> records, List<String> different) {
    public SameNumber {
      records = List.copyOf(records);
      different = List.copyOf(different);
    }
  }

  /**
   * Records under different numbers, each of which is nearly the same as another of them.
   *
   * @param size how many
   * @param records the first of them, in input order
   * @param equal entries in which all agree
   * @param different keys of entries in which they differ
   */
  public record NearCopy(int size, List<Seen> records, int equal, List<String> different) {
    public NearCopy {
      records = List.copyOf(records);
      different = List.copyOf(different);
    }
  }

  /**
   * What was found.
   *
   * @param sameNumbers numbers that stand on several rows, in input order, at most so many
   * @param sameNumberTotal how many such numbers there are
   * @param sameNumberRows on how many rows
   * @param nearCopies groups of near copies, in input order, at most so many
   * @param nearCopyTotal how many groups there are
   * @param nearCopyRecords how many records are in them
   * @param notCompared records that agree in a hash with more than they were laid beside: copies
   *     may have been missed among them
   */
  public record Found(
      List<SameNumber> sameNumbers,
      long sameNumberTotal,
      long sameNumberRows,
      List<NearCopy> nearCopies,
      long nearCopyTotal,
      long nearCopyRecords,
      long notCompared) {
    public Found {
      sameNumbers = List.copyOf(sameNumbers);
      nearCopies = List.copyOf(nearCopies);
    }

    /** Whether so many forms are alike that copies may have been missed. */
    public boolean isCut() {
      return notCompared > 0;
    }
  }

  /** Looks for both. */
  public Found find() throws IOException {
    LongBuffer ids = survey.ids();
    SameNumbers numbers = new SameNumbers(ids, survey.columns());
    List<SameNumber> same = new ArrayList<>();
    for (int[] group : numbers.first(most)) {
      same.add(described(group));
    }
    NearCopies near = new NearCopies(survey, alike, ids);
    return new Found(
        same,
        numbers.count(),
        numbers.rows(),
        near.shown(most),
        near.groups(),
        near.records(),
        near.notCompared());
  }

  private SameNumber described(int[] group) throws IOException {
    List<Seen> seen = new ArrayList<>();
    int[] first = alike.marks();
    int[] other = alike.marks();
    BitSet differs = new BitSet();
    survey.marks(group[0], first);
    for (int i = 0; i < group.length; i++) {
      if (i < most) {
        seen.add(survey.seen(group[i]));
      }
      survey.marks(group[i], other);
      for (int e = 0; e < first.length; e++) {
        if (first[e] != other[e]) {
          differs.set(e);
        }
      }
    }
    return new SameNumber(group.length, seen, alike.keys(differs));
  }
}
