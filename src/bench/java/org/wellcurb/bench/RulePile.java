package org.wellcurb.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * Packs of any number of rules, all unlike, which few records fall short of: so that what grows
 * with the pack is the judging, not the findings.
 */
final class RulePile {
  private static final String[] FORMS = {
    "%1$s <= %2$s %4$s",
    "not %1$s > %2$s %4$s",
    "%1$s between %3$s %4$s and %2$s %4$s",
    "%1$s <= %2$s %4$s and (well.use is 'household' or %1$s >= %3$s %4$s)",
  };

  /** Kinds of numbers that are written in a form of their own. */
  private static final Set<String> LEFT_OUT =
      Set.of("wire.gauge", "site.latitude", "site.longitude");

  private RulePile() {}

  /** Writes {@code pack.json} into the folder. */
  static void write(Path folder, int rules) throws IOException {
    List<Entry> entries = new ArrayList<>();
    for (String key : Columns.KEYS) {
      Entry entry = Catalogue.standard().entry(Catalogue.standard().index(key));
      Unit unit = entry.usUnit();
      boolean isPlain = unit != null && !unit.symbol().isEmpty();
      boolean isBounded = Columns.isNumber(key) && !entry.plausible().isAll();
      if (isPlain && isBounded && !LEFT_OUT.contains(key)) {
        entries.add(entry);
      }
    }
    StringBuilder text = new StringBuilder("{\"pack\": \"pile-" + rules + "\",");
    text.append("\"title\": \"Many rules (invented)\", \"authority\": \"Nobody (invented)\",");
    text.append("\"jurisdictions\": [\"fenwick\"], \"edition\": \"2024-04-01\",");
    text.append("\"judgedBy\": \"dates.completed\", \"sources\": {\"p\": {\"basis\":");
    text.append("\"invented\", \"title\": \"Pile\", \"section\": \"1\"}}, \"rules\": [");
    for (int i = 0; i < rules; i++) {
      text.append(i == 0 ? "\n" : ",\n").append(rule(i, entries.get(i % entries.size()), entries));
    }
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("pack.json"), text.append("]}\n"));
  }

  private static String rule(int i, Entry entry, List<Entry> entries) {
    Unit unit = java.util.Objects.requireNonNull(entry.usUnit());
    double lo = unit.fromSi(entry.plausible().lo());
    double hi = unit.fromSi(entry.plausible().hi());
    double share = (i / entries.size() + 1) / 1_000.0;
    String least = decimal(lo);
    String most = decimal(hi - (hi - lo) * share);
    String form = FORMS[i / entries.size() % FORMS.length];
    String require = String.format(form, entry.key(), most, least, unit.symbol());
    String given =
        ", \"well.use\": \"household\", \"record.datum\": \"ground\", \"dates.completed\":"
            + " \"2020-05-01\"}";
    return "{\"id\": \"r"
        + i
        + "\", \"title\": \"Rule "
        + i
        + "\", \"kind\": \"advisory\", \"require\": \""
        + require
        + "\", \"because\": \"Invented.\", \"remedy\": \"None.\", \"source\": \"p\","
        + "\"examples\": [{\"given\": {\""
        + entry.key()
        + "\": \""
        + decimal((lo + hi) / 2)
        + " "
        + unit.symbol()
        + "\""
        + given
        + ", \"expect\": \"meets\"}, {\"given\": {\""
        + entry.key()
        + "\": \""
        + decimal(hi + (hi - lo) / 100)
        + " "
        + unit.symbol()
        + "\""
        + given
        + ", \"expect\": \"falls short\"}]}";
  }

  private static String decimal(double value) {
    return new java.math.BigDecimal(value)
        .setScale(6, java.math.RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
