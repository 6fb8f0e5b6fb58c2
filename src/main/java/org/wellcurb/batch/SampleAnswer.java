package org.wellcurb.batch;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.DateReader;
import org.wellcurb.quantity.DateReading;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.AnswersCsv;
import org.wellcurb.report.Refused.Why;

/**
 * What an answer must say to be the result of a sample: on which day that was taken, and which
 * laboratory found it. Where the record has a result already, only a later sample answers it: of
 * the one that was taken, what was found stays found.
 */
final class SampleAnswer {
  static final String FIRST = "sample.coliform";
  static final String AGAIN = "sample.coliform_again";

  private SampleAnswer() {}

  /**
   * Why an answer is not the result of a sample; null if it is, or if none is asked for.
   *
   * @param asOf as-of date of the run; no sample was taken after it
   */
  static @Nullable Why why(WellRecord was, Answers.Line line, LocalDate asOf) {
    String key = line.entry().key();
    if (!AnswersCsv.isResult(key)) {
      return null;
    }
    DateReading day = DateReader.read(line.sampled(), DateOrder.ISO_ONLY, 0, DayNumbers.NONE);
    if (line.laboratory().isEmpty() || !day.isRead() || day.from() != day.to()) {
      return Why.NO_SAMPLE;
    }
    if (day.to() > asOf.toEpochDay()) {
      return Why.LATER;
    }
    int sampled =
        was.catalogue().index(key.equals(AGAIN) ? "dates.sampled_again" : "dates.sampled");
    // Of a sample of "2009" it is not known that one of that year is later.
    double last = Double.isInfinite(was.hi(sampled)) ? was.lo(sampled) : was.hi(sampled);
    boolean isLater = !was.isGiven(sampled) || day.from() > last;
    return was.isGiven(line.entry().index()) && !isLater ? Why.NO_SAMPLE : null;
  }
}
