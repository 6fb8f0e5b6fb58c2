package org.wellcurb.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.words.UnitsShown;

/**
 * An empty form of the catalogue's entries: a table's header line, a JSON record, a page to print.
 */
public final class BlankForm {
  private BlankForm() {}

  /** The header line of a table, each amount with its unit in this system (US unless metric). */
  public static String csv(UnitsShown units) {
    StringJoiner header = new StringJoiner(",", "", "\n");
    for (Entry entry : Catalogue.standard().entries()) {
      if (!isJsonOnly(entry)) {
        @Nullable Unit unit = entry.unit(system(units));
        String symbol = unit == null ? "" : unit.symbol();
        header.add(symbol.isEmpty() ? entry.key() : entry.key() + " [" + symbol + "]");
      }
    }
    return header.toString();
  }

  /** A record of which every entry is blank; {@code record.units} says what bare numbers are in. */
  public static String json(UnitsShown units) {
    ObjectNode record = new JsonMapper().createObjectNode();
    for (Entry entry : Catalogue.standard().entries()) {
      if (!isJsonOnly(entry)) {
        int dot = entry.key().indexOf('.');
        boolean isUnits = entry.key().equals("record.units");
        record
            .withObjectProperty(entry.key().substring(0, dot))
            .put(
                entry.key().substring(dot + 1),
                isUnits ? (system(units) == UnitSystem.METRIC ? "metric" : "us") : "");
      }
    }
    record.putArray("layers");
    try {
      DefaultIndenter lines = new DefaultIndenter("  ", "\n");
      return new JsonMapper()
              .writer(new DefaultPrettyPrinter().withObjectIndenter(lines))
              .writeValueAsString(record)
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The form as a page. */
  public static String html(PageStyle style) {
    return new Pages(style).blank(Catalogue.standard());
  }

  private static boolean isJsonOnly(Entry entry) {
    return entry.kind() == Kind.LIST && !entry.key().contains(".");
  }

  private static UnitSystem system(UnitsShown units) {
    return units == UnitsShown.METRIC ? UnitSystem.METRIC : UnitSystem.US;
  }
}
