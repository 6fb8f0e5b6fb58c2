package org.wellcurb.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/** Drafts a header map from what a survey guessed. It runs as it stands; it is still a guess. */
public final class MapDraft {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private MapDraft() {}

  /** The map, as JSON text that ends with a line feed. */
  public static String of(HeaderSurvey survey) {
    return of(survey, List.of());
  }

  /** The map of a table and of others that belong to it. */
  public static String of(HeaderSurvey survey, List<JoinGuess> joins) {
    ObjectNode map = JSON.objectNode();
    map.put(
        "$comment",
        "Drafted from what the columns look like. Every line is a guess: read them, mend them.");
    map.put("title", "Export " + survey.file());
    int more = survey.layout().moreColumns();
    if (!survey.sheet().isEmpty() || more > 0) {
      ObjectNode table = map.putObject("table");
      if (!survey.sheet().isEmpty()) {
        table.put("sheet", survey.sheet());
      }
      if (more > 0) {
        table.put("moreColumns", more);
      }
    }
    if (!survey.forUnknown().isEmpty()) {
      ArrayNode unknown = map.putArray("unknown");
      survey.forUnknown().forEach(unknown::add);
    }
    if (survey.hasDecimalCommas()) {
      map.put("comma", "decimal");
    }
    if (!survey.dateOrder().isEmpty()) {
      map.put("dates", survey.dateOrder());
    }
    List<String> left = columns(survey, map);
    layers(survey, map);
    if (map.has("layers") && survey.layers().get(0).isOfRow()) {
      map.put("rows", "one record an id");
    }
    if (!joins.isEmpty()) {
      ArrayNode all = map.putArray("joins");
      joins.forEach(join -> all.add(join(survey, join)));
    }
    if (!left.isEmpty()) {
      map.put(
          "$comment",
          map.path("$comment").asText()
              + " No entry was found for these, which are kept with each record and reported until"
              + " you put one for \"?\" in their lines: "
              + String.join(", ", left)
              + ".");
    }
    return map.toPrettyString().replace("\r\n", "\n") + "\n";
  }

  private static ObjectNode join(HeaderSurvey main, JoinGuess guess) {
    ObjectNode join = JSON.objectNode();
    HeaderSurvey survey = guess.survey();
    join.put("file", survey.file());
    join.set("id", name(survey, guess.id()));
    @Nullable Entry entry = main.columns().get(guess.matches()).entry();
    if (entry == null || entry.index() != 0) {
      join.set("matches", name(main, guess.matches()));
    }
    columns(survey, join);
    layers(survey, join);
    join.put("$comment", "Because most of its ids stand in the main table, too.");
    return join;
  }

  /** Adds what is guessed of the columns; gives the names of those left over. */
  private static List<String> columns(HeaderSurvey survey, ObjectNode map) {
    ArrayNode columns = map.putArray("columns");
    List<String> left = new ArrayList<>();
    for (int i = 0; i < survey.columns().size(); i++) {
      ColumnGuess guess = survey.columns().get(i);
      Entry entry = guess.entry();
      if (entry == null) {
        if (guess.survey().filled() > 0 && guess.role() == ColumnGuess.Role.ENTRY) {
          left.add(guess.survey().name());
          boolean isKnown = !guess.written().equals(WrittenGuess.NONE);
          columns.add(
              isKnown
                  ? column(survey, guess, OpenLine.OPEN, place(survey, i))
                  : OpenLine.of(guess, place(survey, i)));
        }
      } else {
        columns.add(column(survey, guess, entry.key(), place(survey, i)));
      }
    }
    return left;
  }

  private static void layers(HeaderSurvey survey, ObjectNode map) {
    List<ObjectNode> all = new ArrayList<>();
    for (LayerGuess guess : survey.layers()) {
      ObjectNode layer = JSON.objectNode();
      if (guess.from() >= 0) {
        layer.set("from", name(survey, guess.from()));
      }
      layer.set("to", name(survey, guess.to()));
      layer.set("material", name(survey, guess.material()));
      Unit unit = guess.unit();
      if (unit != null) {
        layer.put("unit", unit.symbol());
      }
      if (!guess.unitFrom().isEmpty()) {
        units(survey, guess.unitFrom(), layer);
      }
      layer.put(
          "$comment",
          "Because their headers say top, bottom and material of a layer."
              + (guess.isUnitUnsaid() ? " Look: nothing states the unit of the depths." : ""));
      all.add(layer);
    }
    if (all.size() == 1 && survey.layers().get(0).isOfRow()) {
      map.set("layers", all.get(0));
    } else if (!all.isEmpty()) {
      map.putArray("layers").addAll(all);
    }
  }

  private static void units(HeaderSurvey survey, String from, ObjectNode into) {
    into.put("unitFrom", from);
    ObjectNode words = into.putObject("unitWords");
    UnitColumns.words(survey, from).forEach(words::put);
  }

  /** How the map names a column. */
  private static JsonNode name(HeaderSurvey survey, int column) {
    @Nullable Integer place = place(survey, column);
    return place == null
        ? JSON.textNode(survey.columns().get(column).survey().name())
        : JSON.numberNode(place);
  }

  /** A column is named by its header where no other has the same, else by its place. */
  private static @Nullable Integer place(HeaderSurvey survey, int column) {
    String name = ColumnName.fold(survey.columns().get(column).survey().name());
    long same =
        survey.columns().stream()
            .filter(other -> ColumnName.fold(other.survey().name()).equals(name))
            .count();
    int named = survey.columns().size() - survey.layout().moreColumns();
    return same > 1 || column >= named || survey.layout().header().isEmpty() ? column + 1 : null;
  }

  private static ObjectNode column(
      HeaderSurvey survey, ColumnGuess guess, String entry, @Nullable Integer place) {
    ObjectNode column = JSON.objectNode();
    if (!guess.joined().isEmpty()) {
      ArrayNode columns = column.putArray("columns").add(guess.survey().name());
      guess.joined().forEach(columns::add);
      column.put("join", guess.join());
    } else if (place == null) {
      column.put("column", guess.survey().name());
    } else {
      column.put("column", place);
    }
    Unit unit = guess.unit();
    @Nullable Entry bottom = guess.bottom();
    if (bottom != null) {
      ArrayNode split = column.putArray("split");
      Intervals.SEPARATORS.forEach(split::add);
      ArrayNode into = column.putArray("into");
      for (String end : List.of(entry, bottom.key())) {
        ObjectNode target = into.addObject().put("entry", end);
        if (unit != null) {
          target.put("unit", unit.symbol());
        }
      }
    } else {
      column.put("entry", entry);
    }
    if (unit != null && bottom == null) {
      column.put("unit", unit.symbol());
    }
    if (!guess.written().unitFrom().isEmpty()) {
      units(survey, guess.written().unitFrom(), column);
    }
    if (!guess.written().dates().isEmpty()) {
      column.put("dates", guess.written().dates());
    }
    if (guess.written().pivot() > 0) {
      column.put("pivot", guess.written().pivot());
    }
    if (guess.written().areDayNumbers()) {
      column.put("dayNumbers", "from 1900");
    }
    if (!guess.written().unknown().isEmpty()) {
      ArrayNode unknown = column.putArray("unknown");
      guess.written().unknown().forEach(unknown::add);
    }
    if (!guess.written().words().isEmpty()) {
      ObjectNode words = column.putObject("words");
      guess.written().words().forEach(words::put);
    }
    List<String> doubts = guess.toLookAt();
    String why =
        entry.equals(OpenLine.OPEN)
            ? "Such as "
                + String.join(" | ", guess.survey().samples())
                + ". Open, for "
                + guess.why()
                + "."
            : "Because " + guess.why() + ".";
    column.put(
        "$comment", doubts.isEmpty() ? why : why + " Look: " + String.join("; ", doubts) + ".");
    return column;
  }
}
