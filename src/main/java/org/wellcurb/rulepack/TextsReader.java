package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;

/** Reads the dated texts of a rule. */
final class TextsReader {

  /**
   * A dated text as it stands.
   *
   * @param at where it stands
   * @param text what it says
   * @param source where it is written; null where the rule's source is meant
   */
  record Text(Json at, DatedText text, @Nullable Source source) {}

  private final PackContext pack;

  TextsReader(PackContext pack) {
    this.pack = pack;
  }

  /** The texts; null where one of them cannot be read. */
  @Nullable List<Text> read(Json json) {
    List<Text> texts = new ArrayList<>();
    List<Json> items = pack.shapes().items(json, 1);
    for (Json item : items) {
      Text text = text(item);
      if (text != null) {
        texts.add(text);
      }
    }
    if (texts.isEmpty() || texts.size() < items.size()) {
      return null;
    }
    return refuseOverlaps(texts) ? null : texts;
  }

  private @Nullable Text text(Json json) {
    Fields fields = pack.shapes().fields(json);
    if (fields == null) {
      return null;
    }
    int before = pack.problems().count() + pack.problems().stumbles().size();
    Json untilAt = fields.may("until");
    LocalDate from = pack.shapes().date(fields.may("from"));
    LocalDate until = pack.shapes().date(untilAt);
    Json whenAt = fields.may("when");
    Formula when = pack.formula(whenAt);
    Formula require = pack.formula(fields.must("require"));
    Json sourceAt = fields.may("source");
    Source source = pack.source(sourceAt);
    fields.done();
    if (from != null && until != null && untilAt != null && until.isBefore(from)) {
      pack.problems().at(untilAt, "it ends before it begins, on " + from, "mend one of the days");
    }
    boolean isWhole =
        require != null
            && (when != null || whenAt == null)
            && (source != null || sourceAt == null)
            && pack.problems().count() + pack.problems().stumbles().size() == before;
    return isWhole ? new Text(json, new DatedText(from, until, when, require), source) : null;
  }

  /** Two texts may not be in force on one day. */
  private boolean refuseOverlaps(List<Text> texts) {
    boolean any = false;
    for (int later = 1; later < texts.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        DatedText a = texts.get(earlier).text;
        DatedText b = texts.get(later).text;
        double day = Math.max(a.firstDay(), b.firstDay());
        if (day <= Math.min(a.lastDay(), b.lastDay())) {
          any = true;
          pack.problems()
              .at(
                  texts.get(later).at,
                  "this text and number "
                      + (earlier + 1)
                      + " are both in force"
                      + (Double.isInfinite(day)
                          ? " on the first days"
                          : " on " + LocalDate.ofEpochDay((long) day)),
                  "end the one on the day before the other begins");
        }
      }
    }
    return any;
  }
}
