package org.wellcurb.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Sentinels;

/** The words of a header map that say how cells and files are written. */
final class MapStyles {
  private MapStyles() {}

  /** How cells are written: what the value says, and for the rest what was said above it. */
  static CellStyle style(JsonNode node, CellStyle before) {
    CellStyle style = before;
    if (node.has("comma")) {
      boolean decimal = node.path("comma").asText().equals("decimal");
      style = style.withComma(decimal ? Comma.DECIMAL : Comma.THOUSANDS);
    }
    if (node.has("dates")) {
      style = style.withDateOrder(order(node.path("dates").asText()));
    }
    if (node.has("pivot")) {
      style = style.withPivotYear(node.path("pivot").asInt());
    }
    if (node.has("dayNumbers")) {
      style = style.withDayNumbers(dayNumbers(node.path("dayNumbers").asText()));
    }
    if (node.has("unknown") || node.has("notApplicable")) {
      Sentinels more = Sentinels.of(texts(node.path("unknown")), texts(node.path("notApplicable")));
      style = style.withSentinels(style.sentinels().and(more));
    }
    return style;
  }

  private static Set<String> texts(JsonNode node) {
    Set<String> texts = new LinkedHashSet<>();
    node.forEach(n -> texts.add(n.asText()));
    return texts;
  }

  private static DateOrder order(String word) {
    return switch (word) {
      case "day first" -> DateOrder.DAY_FIRST;
      case "month first" -> DateOrder.MONTH_FIRST;
      case "year first" -> DateOrder.YEAR_FIRST;
      default -> DateOrder.ISO_ONLY;
    };
  }

  private static DayNumbers dayNumbers(String word) {
    return switch (word) {
      case "from 1900" -> DayNumbers.FROM_1900;
      case "from 1904" -> DayNumbers.FROM_1904;
      default -> DayNumbers.NONE;
    };
  }

  static TableForm form(JsonNode node) {
    char delimiter =
        switch (node.path("delimiter").asText("")) {
          case "comma" -> ',';
          case "semicolon" -> ';';
          case "tab" -> '\t';
          case "bar" -> '|';
          default -> 0;
        };
    @Nullable TextEncoding encoding =
        switch (node.path("encoding").asText("")) {
          case "UTF-8" -> TextEncoding.UTF_8;
          case "Windows-1252" -> TextEncoding.WINDOWS_1252;
          case "UTF-16 little" -> TextEncoding.UTF_16_LE;
          case "UTF-16 big" -> TextEncoding.UTF_16_BE;
          default -> null;
        };
    int header = node.has("header") ? node.path("header").asInt() : -1;
    int line = header < 0 ? 0 : header == 0 ? -1 : header;
    return new TableForm(
        delimiter,
        encoding,
        line,
        node.path("sheet").asText(""),
        node.path("moreColumns").asInt(0));
  }

  static Combine combine(String label) {
    for (Combine combine : Combine.values()) {
      if (combine.label().equals(label)) {
        return combine;
      }
    }
    return Combine.ONE;
  }

  static OfSeveral ofSeveral(String label) {
    for (OfSeveral which : OfSeveral.values()) {
      if (which.label().equals(label)) {
        return which;
      }
    }
    return OfSeveral.FIRST;
  }
}
