package org.wellcurb.report;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.screening.Finding;

/** {@code findings.csv}: one line a finding, in input order, then rule order. */
public final class FindingsCsv {
  public static final String HEADER =
      "record_id,file,row,pack,rule,kind,title,entry,written,value,unit,limit,margin,"
          + "possible_reading\n";

  /** The header where findings can have been settled: with a column more. */
  public static final String SETTLED_HEADER = HEADER.replace("\n", ",settled\n");

  private FindingsCsv() {}

  /** Adds one line under {@link #HEADER}. */
  public static void put(ByteText out, Finding finding) {
    CsvLine line = new CsvLine(out);
    put(line, finding);
    line.end();
  }

  /**
   * Adds one line under {@link #SETTLED_HEADER}.
   *
   * @param settled how someone settled it; null while it is open
   */
  public static void put(ByteText out, Finding finding, @Nullable Settlement settled) {
    CsvLine line = new CsvLine(out);
    put(line, finding);
    line.text(settled == null ? "" : settled.told()).end();
  }

  private static void put(CsvLine line, Finding finding) {
    Deciding deciding = finding.deciding();
    line.text(finding.recordId())
        .text(finding.file())
        .whole(finding.row())
        .text(finding.pack())
        .text(finding.rule().id())
        .word(finding.rule().kind().label())
        .text(finding.rule().title())
        .text(deciding.entry())
        .text(deciding.written());
    value(line, deciding);
    limit(line, deciding);
    line.number(deciding.margin()).text(finding.possibleReading());
  }

  /** Adds what was compared, and its unit. */
  static void value(CsvLine line, Deciding deciding) {
    amount(line, deciding, deciding.value(), deciding.valueText());
    if (deciding.isDate()) {
      line.word(Units.DAY.symbol());
    } else {
      line.unit(deciding.unit());
    }
  }

  /** Adds the limit: of a range the end that decides, so that a table can reckon with it. */
  static void limit(CsvLine line, Deciding deciding) {
    boolean isKnown = !Double.isNaN(deciding.limit());
    amount(line, deciding, deciding.limit(), isKnown ? "" : deciding.limitText());
  }

  private static void amount(CsvLine line, Deciding deciding, double number, String text) {
    if (!text.isEmpty()) {
      line.text(bare(text, deciding.unit()));
    } else if (deciding.isDate() && !Double.isNaN(number) && !Double.isInfinite(number)) {
      line.word(LocalDate.ofEpochDay((long) number).toString());
    } else {
      line.number(number);
    }
  }

  /** A range without its unit, which stands in a column of its own. */
  private static String bare(String range, @Nullable Unit unit) {
    return unit == null || unit.symbol().isEmpty() ? range : range.replace(" " + unit.symbol(), "");
  }
}
