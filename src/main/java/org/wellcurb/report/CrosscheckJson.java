package org.wellcurb.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import org.wellcurb.crosscheck.Alike;
import org.wellcurb.crosscheck.Copying;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Duplicates;
import org.wellcurb.crosscheck.Field;
import org.wellcurb.crosscheck.RuleFloors;
import org.wellcurb.crosscheck.Seen;
import org.wellcurb.crosscheck.Share;

/** {@code crosscheck.json}: what only the whole batch shows, with its statistics. */
public final class CrosscheckJson {
  private CrosscheckJson() {}

  /** Writes the file and closes the stream. */
  public static void write(OutputStream out, CrossView view) throws IOException {
    CrossResult result = view.result();
    try (JsonGenerator json = JsonText.file(out)) {
      json.writeStartObject();
      json.writeStringField("note", "Hints to look, not findings and not proof.");
      json.writeNumberField("records", result.records());
      json.writeNumberField("namesLeftOut", result.unnamed());
      JsonText.number(json, "falseDiscoveryRate", CrossResult.ACCEPTED);
      json.writeNumberField("tests", result.tests());
      tests(json, result);
      sameNumbers(json, view);
      nearCopies(json, view);
      figures(json, view);
      slips(json, view);
      unlike(json, view);
      ruleHints(json, result);
      rules(json, view);
      asks(json, view);
      json.writeNumberField("leastOfGroup", CrossResult.LEAST_OF_GROUP);
      rates(json, "contractors", result.contractors());
      rates(json, "zones", result.zones());
      rates(json, "years", result.years());
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  private static void tests(JsonGenerator json, CrossResult result) throws IOException {
    CrossResult.Tests tried = result.tried();
    json.writeObjectFieldStart("testsByKind");
    json.writeNumberField("figuresAndUnits", tried.figures() + tried.units());
    json.writeNumberField("rules", tried.rules());
    for (CrossResult.By by : CrossResult.By.values()) {
      String kind = by.name().toLowerCase(Locale.ROOT) + "Rates";
      json.writeNumberField(kind, tried.rates().get(by.ordinal()));
    }
    json.writeEndObject();
    json.writeStringField(
        "aboutQ",
        "q is the least of p times tests over rank, over this test and all of a greater p; the"
            + " greater of that over all tests and that over those of its kind.");
  }

  private static void rank(JsonGenerator json, CrossResult.Rank rank) throws IOException {
    json.writeNumberField("rankOfAll", rank.ofAll());
    json.writeNumberField("rankOfKind", rank.ofKind());
  }

  private static void seen(JsonGenerator json, CrossView view, Seen seen) throws IOException {
    json.writeStartObject();
    json.writeStringField("record_id", view.id(seen));
    json.writeStringField("file", seen.file());
    json.writeNumberField("row", seen.row());
    json.writeEndObject();
  }

  private static void seen(JsonGenerator json, CrossView view, List<Seen> all) throws IOException {
    json.writeArrayFieldStart("records");
    for (Seen each : all) {
      seen(json, view, each);
    }
    json.writeEndArray();
  }

  private static void texts(JsonGenerator json, String name, List<String> texts)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private static void share(JsonGenerator json, Share share) throws IOException {
    json.writeNumberField("hits", share.hits());
    json.writeNumberField("of", share.of());
    JsonText.number(json, "share", share.share());
    JsonText.number(json, "low", share.lo());
    JsonText.number(json, "high", share.hi());
  }

  private static void sameNumbers(JsonGenerator json, CrossView view) throws IOException {
    Duplicates.Found found = view.result().duplicates();
    json.writeObjectFieldStart("sameNumber");
    json.writeNumberField("total", found.sameNumberTotal());
    json.writeNumberField("rows", found.sameNumberRows());
    json.writeArrayFieldStart("shown");
    for (Duplicates.SameNumber same : found.sameNumbers()) {
      json.writeStartObject();
      json.writeNumberField("rows", same.rows());
      seen(json, view, same.records());
      texts(json, "different", same.different());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void nearCopies(JsonGenerator json, CrossView view) throws IOException {
    Duplicates.Found found = view.result().duplicates();
    json.writeObjectFieldStart("nearCopy");
    json.writeNumberField("total", found.nearCopyTotal());
    json.writeNumberField("records", found.nearCopyRecords());
    json.writeNumberField("mostDifferent", Alike.MOST_DIFFERENT);
    json.writeNumberField("leastMeasured", Alike.LEAST_MEASURED);
    json.writeNumberField("leastMeasuredOfMuch", Alike.LEAST_MEASURED_OF_MUCH);
    json.writeNumberField("leastEqual", Alike.LEAST_EQUAL);
    JsonText.number(json, "mostByChance", Alike.MOST_BY_CHANCE);
    json.writeBooleanField("searchCut", found.isCut());
    json.writeNumberField("notAllCompared", found.notCompared());
    json.writeArrayFieldStart("shown");
    for (Duplicates.NearCopy near : found.nearCopies()) {
      json.writeStartObject();
      json.writeNumberField("size", near.size());
      seen(json, view, near.records());
      json.writeNumberField("equal", near.equal());
      texts(json, "different", near.different());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void figures(JsonGenerator json, CrossView view) throws IOException {
    json.writeObjectFieldStart("figures");
    json.writeNumberField("leastOfContractor", Copying.LEAST_OWN);
    json.writeNumberField("leastOfOthers", Copying.LEAST_OTHERS);
    json.writeArrayFieldStart("shown");
    for (CrossResult.FigureHint hint : view.result().figures()) {
      json.writeStartObject();
      json.writeStringField("licence", hint.licence());
      json.writeStringField("zone", hint.zone());
      json.writeStringField("entry", hint.field().key());
      json.writeStringField("kind", hint.kind().name().toLowerCase(Locale.ROOT));
      JsonText.number(json, "figure", hint.figure());
      share(json, hint.share());
      if (hint.kind() == Copying.Kind.RUN) {
        json.writeNumberField("row", hint.hits());
        JsonText.number(json, "likelyRow", hint.likelyRow());
      }
      JsonText.number(json, "othersShare", hint.othersShare());
      JsonText.number(json, "p", hint.p());
      JsonText.number(json, "q", hint.q());
      rank(json, hint.rank());
      seen(json, view, hint.seen());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void slips(JsonGenerator json, CrossView view) throws IOException {
    json.writeArrayFieldStart("unitSlips");
    for (CrossResult.SlipHint hint : view.result().slips()) {
      json.writeStartObject();
      json.writeStringField(hint.isInput() ? "file" : "licence", hint.group());
      share(json, hint.share());
      json.writeNumberField("places", hint.places());
      JsonText.number(json, "ratio", hint.ratio());
      JsonText.number(json, "p", hint.p());
      JsonText.number(json, "q", hint.q());
      rank(json, hint.rank());
      seen(json, view, hint.seen());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void unlike(JsonGenerator json, CrossView view) throws IOException {
    CrossResult result = view.result();
    json.writeObjectFieldStart("unlikeNeighbours");
    json.writeNumberField("compared", result.comparedWells());
    json.writeNumberField("total", result.unlikeTotal());
    json.writeArrayFieldStart("looked");
    for (CrossResult.Looked looked : result.looked()) {
      json.writeStartObject();
      json.writeStringField("entry", looked.field().key());
      json.writeStringField("measured", measured(looked.field()));
      json.writeNumberField("wells", looked.wells());
      json.writeStringField("how", how(looked.how()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("shown");
    for (CrossResult.NeighbourHint hint : result.unlike()) {
      json.writeStartObject();
      seen(json, view, List.of(hint.seen()));
      json.writeStringField("entry", hint.field().key());
      json.writeStringField("measured", measured(hint.field()));
      JsonText.number(json, "value", hint.value());
      JsonText.number(json, "median", hint.median());
      JsonText.number(json, "spread", hint.spread());
      JsonText.number(json, "believedSpread", hint.believed());
      json.writeNumberField("neighbours", hint.neighbours());
      JsonText.number(json, "score", hint.score());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** What the value of a field is, and in what. */
  private static String measured(Field field) {
    return switch (field) {
      case DEPTH -> "depth, m";
      case STATIC_LEVEL -> "height of the water above the sea, m";
      case YIELD -> "logarithm to base 10 of the yield, m3/s";
    };
  }

  private static String how(CrossResult.How how) {
    return switch (how) {
      case COMPARED -> "compared";
      case NONE_NEAR -> "not compared: no well has neighbours enough that agree";
      case TELLS_TOO_LITTLE ->
          "not compared: wells are hardly nearer to their neighbours than to all wells";
    };
  }

  private static void ruleHints(JsonGenerator json, CrossResult result) throws IOException {
    json.writeObjectFieldStart("rulesByGroup");
    json.writeNumberField("tests", result.rulesTests());
    json.writeNumberField("groupsLeftOut", result.groupsLeftOut());
    json.writeNumberField("notAmongOthers", result.notAmongOthers());
    json.writeNumberField("leastOfGroup", RuleFloors.OF_GROUP);
    json.writeNumberField("leastOfOthers", RuleFloors.OF_OTHERS);
    json.writeNumberField("leastOfOthersInZone", RuleFloors.IN_STRATUM);
    json.writeNumberField("leastShort", RuleFloors.SHORT);
    JsonText.number(json, "leastMore", RuleFloors.MORE);
    JsonText.number(json, "leastRatio", RuleFloors.RATIO);
    JsonText.number(json, "leastRatioOfLow", RuleFloors.SURE_RATIO);
    json.writeNumberField("total", result.rulesTotal());
    json.writeArrayFieldStart("shown");
    for (CrossResult.RuleHint hint : result.rules()) {
      json.writeStartObject();
      json.writeStringField(hint.by().name().toLowerCase(Locale.ROOT), hint.group());
      json.writeStringField("pack", hint.pack());
      json.writeStringField("rule", hint.rule());
      share(json, hint.share());
      JsonText.number(json, "othersShare", hint.othersShare());
      JsonText.number(json, "between", hint.between());
      JsonText.number(json, "p", hint.p());
      JsonText.number(json, "q", hint.q());
      rank(json, hint.rank());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void rules(JsonGenerator json, CrossView view) throws IOException {
    json.writeArrayFieldStart("rules");
    for (RuleCount rule : view.rules()) {
      json.writeStartObject();
      json.writeStringField("pack", rule.pack());
      json.writeStringField("rule", rule.rule());
      json.writeStringField("kind", rule.kind());
      share(json, rule.share());
      json.writeNumberField("nearLimit", rule.near());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void asks(JsonGenerator json, CrossView view) throws IOException {
    json.writeObjectFieldStart("askFor");
    json.writeNumberField("countedOver", view.askedOf());
    json.writeArrayFieldStart("entries");
    for (AskLine ask : view.asks()) {
      json.writeStartObject();
      json.writeStringField("entry", ask.entry());
      json.writeNumberField("outcomes", ask.outcomes());
      json.writeNumberField("records", ask.records());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void rates(JsonGenerator json, String name, List<CrossResult.GroupRate> rates)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (CrossResult.GroupRate rate : rates) {
      json.writeStartObject();
      json.writeStringField("name", rate.name());
      share(json, rate.share());
      JsonText.number(json, "expected", rate.expected());
      JsonText.number(json, "funnelLow", rate.low());
      JsonText.number(json, "funnelHigh", rate.high());
      json.writeBooleanField("small", rate.isSmall());
      JsonText.number(json, "spread", rate.spread());
      JsonText.number(json, "p", rate.p());
      JsonText.number(json, "q", rate.q());
      if (!rate.isSmall()) {
        rank(json, rate.rank());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
