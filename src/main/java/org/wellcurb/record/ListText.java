package org.wellcurb.record;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Note;

/** Lists in one cell: variances, {@code rule-id: reference}, separated by semicolons. */
final class ListText {
  private ListText() {}

  static void read(RecordFiller into, int entry, String key, String text) {
    if (!key.equals("record.variances")) {
      into.absent(entry, WellRecord.UNREADABLE, Note.NOT_A_LIST);
      return;
    }
    List<Variance> variances = variances(text);
    into.variances(variances);
    into.text(entry, CellText.fold(text));
  }

  /** The variances of a text; parts without a rule are left out. */
  static List<Variance> variances(String text) {
    List<Variance> variances = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      int colon = part.indexOf(':');
      String rule = CellText.trim(colon < 0 ? part : part.substring(0, colon));
      String reference = colon < 0 ? "" : CellText.trim(part.substring(colon + 1));
      if (!rule.isEmpty()) {
        variances.add(new Variance(rule, reference));
      }
    }
    return variances;
  }
}
