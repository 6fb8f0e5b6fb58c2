package org.wellcurb.crosscheck;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.NameFold;
import org.wellcurb.record.WellRecord;

/** The rows of one part of a batch. Used again and again; not for several threads. */
public final class SurveyPart {
  private final SurveyRow row;
  private ByteBuffer rows;
  private ByteBuffer marks;
  private final int marksLength;
  private final Names contractors = new Names(Integer.MAX_VALUE);
  private final Names zones = new Names(Integer.MAX_VALUE);

  /**
   * @param rules rules of the longest pack
   */
  public SurveyPart(Catalogue catalogue, int rules) {
    row = new SurveyRow(catalogue, rules);
    rows = ByteBuffer.allocate(0);
    marks = ByteBuffer.allocate(0);
    marksLength = SurveyRow.marksLength(catalogue);
  }

  /** Names by the order in which they were met. */
  static final class Names {
    private final Map<String, Integer> places = new HashMap<>();

    /** The same as they stand on forms, which most often is one of few ways. */
    private final Map<String, Integer> asWritten = new HashMap<>();

    private final List<String> written = new ArrayList<>();
    private final int most;

    /**
     * @param most names that are kept, besides the empty one: those met after are taken for it
     */
    Names(int most) {
      this.most = most;
    }

    int place(String name) {
      Integer known = asWritten.get(name);
      if (known != null) {
        return known;
      }
      String folded = NameFold.of(name);
      Integer place = places.get(folded);
      if (place == null && places.size() > most && !folded.isEmpty()) {
        return place("");
      }
      if (place == null) {
        place = written.size();
        places.put(folded, place);
        written.add(name);
      }
      if (asWritten.size() / 2 <= most) {
        asWritten.put(name, place);
      }
      return place;
    }

    List<String> written() {
      return written;
    }

    void clear() {
      places.clear();
      asWritten.clear();
      written.clear();
    }
  }

  /**
   * Adds a record.
   *
   * @param hashes of the values of its entries, as {@link org.wellcurb.record.RecordMark} has them
   * @param isDeficient whether a rule of the kind deficiency falls short
   * @param isTold whether a rule of that kind could be told
   * @param pack place of the pack that judged
   * @param told what each of its rules said, as {@link Told} has it
   * @param contractor the driller's licence as written; empty where the record gives none
   * @param zone the same of its zone
   */
  public void add(
      WellRecord record,
      int[] hashes,
      boolean isDeficient,
      boolean isTold,
      int pack,
      byte[] told,
      String contractor,
      String zone) {
    rows = withRoom(rows, row.length());
    marks = withRoom(marks, marksLength);
    int at = rows.position();
    int flags = (isDeficient ? SurveyRow.DEFICIENT : 0) | (isTold ? SurveyRow.TOLD : 0);
    row.put(rows, record, hashes, flags);
    row.told(rows, at, pack, told);
    rows.putInt(at + SurveyRow.MARKS, marks.position());
    row.marks(marks, record, hashes);
    rows.putInt(at + SurveyRow.CONTRACTOR, contractors.place(contractor));
    rows.putInt(at + SurveyRow.ZONE, zones.place(zone));
  }

  /** The buffer, or a greater one with what it holds, with room for so many bytes. */
  static ByteBuffer withRoom(ByteBuffer buffer, int bytes) {
    if (buffer.remaining() >= bytes) {
      return buffer;
    }
    int least = buffer.position() + Math.max(bytes, 16_384);
    return ByteBuffer.allocate(Math.max(least, buffer.capacity() / 2 * 3)).put(buffer.flip());
  }

  ByteBuffer rows() {
    return rows;
  }

  /** The marks of all its records, one after the other. */
  ByteBuffer marks() {
    return marks;
  }

  Names contractors() {
    return contractors;
  }

  Names zones() {
    return zones;
  }

  public void clear() {
    rows.clear();
    marks.clear();
    contractors.clear();
    zones.clear();
  }
}
