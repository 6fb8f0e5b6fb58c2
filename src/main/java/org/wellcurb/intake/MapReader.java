package org.wellcurb.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Makes a header map of JSON whose shape is sound; notes what makes no sense. */
final class MapReader {
  private final MapText text;
  private final Catalogue catalogue;

  MapReader(MapText text, Catalogue catalogue) {
    this.text = text;
    this.catalogue = catalogue;
  }

  HeaderMap map() {
    JsonNode root = text.root();
    TableMap main = table(root, "", TableMap.STYLE);
    List<HeaderMap.Constant> constants = new ArrayList<>();
    root.path("constants")
        .properties()
        .forEach(
            e -> {
              Entry entry = entry(e.getKey(), "/constants/" + e.getKey());
              if (entry != null) {
                constants.add(new HeaderMap.Constant(entry.index(), e.getValue().asText()));
              }
            });
    List<Join> joins = new ArrayList<>();
    JsonNode list = root.path("joins");
    for (int i = 0; i < list.size(); i++) {
      JsonNode join = list.get(i);
      joins.add(
          new Join(
              join.path("file").asText(),
              column(join.path("id")),
              join.has("matches") ? column(join.path("matches")) : null,
              table(join, "/joins/" + i, MapStyles.style(root, TableMap.STYLE))));
    }
    twice(main, constants);
    boolean byId = root.path("rows").asText().equals("one record an id");
    return new HeaderMap(root.path("title").asText(), main, constants, byId, joins);
  }

  private void twice(TableMap main, List<HeaderMap.Constant> constants) {
    Map<String, String> filled = new HashMap<>();
    for (int i = 0; i < main.columns().size(); i++) {
      for (Target target : main.columns().get(i).targets()) {
        String key = target.entry().key();
        String first = filled.putIfAbsent(key, "/columns/" + i);
        if (first != null) {
          text.add("/columns/" + i, key + " is filled by " + first + " too", "keep one of them");
        }
      }
    }
    for (HeaderMap.Constant constant : constants) {
      String key = catalogue.entry(constant.entry()).key();
      if (filled.containsKey(key)) {
        text.add("/constants/" + key, key + " is filled by a column too", "keep one of them");
      }
    }
  }

  private TableMap table(JsonNode node, String at, CellStyle before) {
    CellStyle style = MapStyles.style(node, before);
    List<MappedColumns> columns = new ArrayList<>();
    JsonNode list = node.path("columns");
    for (int i = 0; i < list.size(); i++) {
      MappedColumns mapped = columns(list.get(i), at + "/columns/" + i, style);
      if (mapped != null) {
        columns.add(mapped);
      }
    }
    List<ColumnName> ignored = new ArrayList<>();
    node.path("ignore").forEach(n -> ignored.add(column(n)));
    List<RowFilter> only = new ArrayList<>();
    JsonNode conditions = node.path("only");
    for (int i = 0; i < conditions.size(); i++) {
      JsonNode condition = conditions.get(i);
      if (condition.has("is") == condition.has("isNot")) {
        text.add(at + "/only/" + i, "a condition has \"is\" or \"isNot\"", "give one of them");
      }
      boolean wanted = condition.has("is");
      only.add(
          new RowFilter(
              column(condition.path("column")),
              folded(condition.path(wanted ? "is" : "isNot")),
              wanted));
    }
    return new TableMap(
        MapStyles.form(node.path("table")),
        style,
        columns,
        ignored,
        only,
        layers(node.path("layers"), at + "/layers", style),
        setbacks(node.path("setbacks"), at + "/setbacks", style));
  }

  private List<LayerColumns> layers(JsonNode node, String at, CellStyle before) {
    List<LayerColumns> layers = new ArrayList<>();
    if (node.isObject()) {
      layers.add(layer(node, at, before));
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      layers.add(layer(node.get(i), at + "/" + i, before));
    }
    return layers;
  }

  private LayerColumns layer(JsonNode node, String at, CellStyle before) {
    return new LayerColumns(
        node.has("from") ? column(node.path("from")) : null,
        column(node.path("to")),
        column(node.path("material")),
        unit(node.path("unit"), at + "/unit", catalogue.find("well.depth")),
        unitFrom(node, at, catalogue.find("well.depth")),
        MapStyles.style(node, before));
  }

  private @Nullable SetbackColumns setbacks(JsonNode node, String at, CellStyle before) {
    if (node.isMissingNode()) {
      return null;
    }
    Map<String, String> words = words(node.path("words"), at + "/words");
    words.forEach((word, key) -> entry("setback." + key, at + "/words"));
    return new SetbackColumns(
        column(node.path("from")),
        column(node.path("distance")),
        words,
        unit(node.path("unit"), at + "/unit", catalogue.find("well.depth")),
        unitFrom(node, at, catalogue.find("well.depth")),
        MapStyles.style(node, before));
  }

  private @Nullable MappedColumns columns(JsonNode node, String at, CellStyle style) {
    if (node.path("entry").asText().equals(OpenLine.OPEN)) {
      return null;
    }
    boolean several = node.has("columns");
    if (several == node.has("column")) {
      text.add(at, "a mapping has \"column\" or \"columns\"", "give one of them");
      return null;
    }
    if (several != node.has("join")) {
      text.add(at, "\"columns\" and \"join\" go together", "give both or neither");
      return null;
    }
    if (node.has("split") != node.has("into") || node.has("into") == node.has("entry")) {
      text.add(at, "a mapping has \"entry\", or \"split\" with \"into\"", "give one of them");
      return null;
    }
    List<ColumnName> names = new ArrayList<>();
    if (several) {
      node.path("columns").forEach(n -> names.add(column(n)));
    } else {
      names.add(column(node.path("column")));
    }
    Combine combine = several ? MapStyles.combine(node.path("join").asText()) : Combine.ONE;
    count(combine, names.size(), at);
    List<Target> targets = new ArrayList<>();
    JsonNode into = node.path("into");
    if (node.has("into")) {
      for (int i = 0; i < into.size(); i++) {
        add(targets, target(into.get(i), at + "/into/" + i, MapStyles.style(node, style)));
      }
    } else {
      add(targets, target(node, at, style));
    }
    if (targets.isEmpty()) {
      return null;
    }
    String between = node.path("with").asText(" ");
    List<String> splits = new ArrayList<>();
    JsonNode split = node.path("split");
    if (split.isArray()) {
      split.forEach(s -> splits.add(s.asText()));
    } else if (split.isTextual()) {
      splits.add(split.asText());
    }
    return new MappedColumns(
        names, combine, between, splits, unitFrom(node, at, targets.get(0).entry()), targets);
  }

  private static void add(List<Target> targets, @Nullable Target target) {
    if (target != null) {
      targets.add(target);
    }
  }

  private void count(Combine combine, int columns, String at) {
    boolean fits =
        switch (combine) {
          case FEET_AND_INCHES, RANGE, NUMBER_AND_UNIT -> columns == 2;
          case DEGREES -> columns >= 2 && columns <= 4;
          case DATE -> columns == 2 || columns == 3;
          case ONE, TEXT, FIRST -> true;
        };
    if (!fits) {
      text.add(
          at + "/columns", "\"" + combine.label() + "\" does not take " + columns + " columns", "");
    }
  }

  private @Nullable UnitColumn unitFrom(JsonNode node, String at, @Nullable Entry of) {
    if (!node.has("unitFrom")) {
      if (node.has("unitWords")) {
        text.add(at + "/unitWords", "\"unitWords\" goes with \"unitFrom\"", "name the column");
      }
      return null;
    }
    Map<String, Unit> words = new HashMap<>();
    node.path("unitWords")
        .properties()
        .forEach(
            e -> {
              String place = at + "/unitWords/" + e.getKey();
              Unit unit = unit(e.getValue(), place, of);
              String word = e.getKey().toLowerCase(Locale.ROOT);
              Unit first = unit == null ? null : words.putIfAbsent(word, unit);
              if (unit != null && first != null && !first.equals(unit)) {
                twoMeanings(place, word, e.getKey(), first.symbol(), unit.symbol());
              }
            });
    return new UnitColumn(column(node.path("unitFrom")), words);
  }

  private @Nullable Target target(JsonNode node, String at, CellStyle before) {
    Entry entry = entry(node.path("entry").asText(), at + "/entry");
    if (entry == null) {
      return null;
    }
    if (entry.kind() == Kind.LIST && !entry.key().equals("record.variances")) {
      text.add(at + "/entry", entry.key() + " is a list", "see \"layers\" of the map");
      return null;
    }
    Map<String, String> words = words(node.path("words"), at + "/words");
    if (entry.kind() == Kind.CHOICE) {
      node.path("words")
          .properties()
          .forEach(e -> choice(entry, e.getKey(), e.getValue().asText(), at + "/words"));
    }
    double scale = node.path("scale").asDouble(1);
    Dimension dimension = entry.kind().dimension();
    boolean scales =
        dimension != null
            && !dimension.equals(Dimension.DATE)
            && !dimension.equals(Dimension.TEMPERATURE)
            && !dimension.equals(Dimension.WIRE_GAUGE);
    if (scale != 1 && (!scales || scale == 0 || !Double.isFinite(scale))) {
      text.add(at + "/scale", entry.key() + " cannot be multiplied with this", "leave it out");
      scale = 1;
    }
    return new Target(
        entry,
        unit(node.path("unit"), at + "/unit", entry),
        MapStyles.style(node, before),
        words,
        scale,
        MapStyles.ofSeveral(node.path("ofSeveral").asText("first")));
  }

  private void choice(Entry entry, String from, String to, String at) {
    boolean said = Set.of("", "unknown", "n/a", "?", "-", "none").contains(to);
    if (!said && entry.choice(to) < 0) {
      text.add(
          at + "/" + from,
          "\"" + to + "\" is no choice of " + entry.key(),
          "one of: " + String.join(" | ", entry.choices()));
    }
  }

  private @Nullable Unit unit(JsonNode node, String at, @Nullable Entry entry) {
    if (node.isMissingNode() || entry == null) {
      return null;
    }
    Unit unit = Units.named(node.asText()).orElse(null);
    if (unit == null) {
      text.add(at, "the unit \"" + node.asText() + "\" is not known", "such as ft, m, gpm, psi");
    } else if (!HeaderEntry.fits(entry, unit)) {
      text.add(
          at,
          unit.symbol()
              + " is "
              + unit.dimension().label()
              + ", "
              + entry.key()
              + " is "
              + entry.kind().label(),
          "give another unit or entry");
    }
    return unit;
  }

  private @Nullable Entry entry(String key, String at) {
    Entry entry = catalogue.find(key);
    if (entry == null) {
      String nearest = catalogue.nearest(key);
      text.add(
          at,
          "there is no entry " + key,
          nearest == null ? "the entry reference lists all" : "did you mean " + nearest + "?");
    }
    return entry;
  }

  private static ColumnName column(JsonNode node) {
    return node.isInt() ? ColumnName.at(node.asInt()) : ColumnName.of(node.asText());
  }

  /** The words without case, as cells are compared; notes a word that would mean two things. */
  private Map<String, String> words(JsonNode node, String at) {
    Map<String, String> words = new HashMap<>();
    Map<String, String> written = new HashMap<>();
    node.properties()
        .forEach(
            e -> {
              String word = e.getKey().strip().toLowerCase(Locale.ROOT);
              String meaning = e.getValue().asText();
              String first = words.putIfAbsent(word, meaning);
              if (first != null && !first.equalsIgnoreCase(meaning)) {
                twoMeanings(at + "/" + e.getKey(), written.get(word), e.getKey(), first, meaning);
              }
              written.putIfAbsent(word, e.getKey());
            });
    return words;
  }

  private void twoMeanings(
      String at, @Nullable String one, String other, String first, String second) {
    text.add(
        at,
        "\"%s\" and \"%s\" are one word, as capitals make no difference, and it means both %s and %s"
            .formatted(one, other, first, second),
        "keep one of the lines");
  }

  private static Set<String> folded(JsonNode node) {
    Set<String> texts = new HashSet<>();
    node.forEach(n -> texts.add(n.asText().strip().toLowerCase(Locale.ROOT)));
    return texts;
  }
}
