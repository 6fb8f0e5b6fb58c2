package org.wellcurb.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Ask;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/**
 * {@code findings.json}: findings with their workings, for the records that have a sheet. Its form
 * is {@code rules/schema/findings.schema.json}.
 */
public final class FindingsJson implements Closeable {
  /** Stands at the top of the file, for whoever reads only that. */
  public static final String CAUTION =
      "This reads forms, not wells. It says which limit an entry meets or falls short of; local"
          + " code, the authority and licensed practice decide.";

  private final JsonGenerator json;
  private final FindingSentences sentences;
  private final Function<Finding, @Nullable Settlement> settled;

  /**
   * Starts the file; closing ends it.
   *
   * @param settled how a finding was settled; null where it is open
   */
  public FindingsJson(
      OutputStream out,
      LocalDate asOf,
      FindingSentences sentences,
      Function<Finding, @Nullable Settlement> settled)
      throws IOException {
    json = JsonText.file(out);
    this.settled = settled;
    this.sentences = sentences;
    json.writeStartObject();
    json.writeStringField("program", "wellcurb");
    json.writeStringField("asOf", asOf.toString());
    json.writeStringField("caution", CAUTION);
    json.writeArrayFieldStart("records");
  }

  /** The sentence of a finding, in the words of the pages. */
  @FunctionalInterface
  public interface FindingSentences {
    String of(Finding finding);
  }

  /**
   * Adds one record.
   *
   * @param sheet address of its sheet from the batch page
   */
  public void put(RecordResult result, String sheet) throws IOException {
    json.writeStartObject();
    json.writeStringField("record_id", result.record().id());
    json.writeStringField("file", result.record().file());
    json.writeNumberField("row", result.record().row());
    json.writeStringField("pack", result.pack().id());
    json.writeStringField("sheet", sheet);
    json.writeArrayFieldStart("findings");
    Map<Rule, RuleResult> explained = new HashMap<>();
    for (RuleResult rule : result.results()) {
      explained.put(rule.rule(), rule);
    }
    for (Finding finding : result.findings()) {
      RuleResult rule = explained.get(finding.rule());
      if (rule == null) {
        throw new IllegalStateException(finding.rule().id() + " has a finding and no result");
      }
      finding(finding, rule.explanation());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("asks");
    for (Ask ask : result.asks()) {
      json.writeStartObject();
      json.writeStringField("entry", ask.entry());
      json.writeNumberField("settles", ask.settles());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void finding(Finding finding, Explanation explanation) throws IOException {
    Rule rule = finding.rule();
    Deciding deciding = finding.deciding();
    json.writeStartObject();
    json.writeStringField("rule", rule.id());
    json.writeStringField("kind", rule.kind().label());
    json.writeStringField("title", rule.title());
    json.writeStringField("sentence", sentences.of(finding));
    json.writeStringField("requirement", explanation.requirement());
    json.writeStringField("condition", explanation.condition());
    json.writeStringField("with_numbers", explanation.withNumbers());
    json.writeStringField("entry", deciding.entry());
    json.writeStringField("written", deciding.written());
    JsonText.number(json, "value", deciding.isDate() ? Double.NaN : deciding.value());
    json.writeStringField(
        "value_text", deciding.isDate() ? day(deciding.value()) : deciding.valueText());
    json.writeStringField("unit", deciding.unit() == null ? "" : deciding.unit().symbol());
    JsonText.number(json, "limit", deciding.isDate() ? Double.NaN : deciding.limit());
    json.writeStringField(
        "limit_text", deciding.isDate() ? day(deciding.limit()) : deciding.limitText());
    JsonText.number(json, "margin", deciding.margin());
    json.writeStringField("because", rule.because());
    json.writeStringField("remedy", rule.remedy());
    source(finding.source());
    strings("remarks", explanation.remarks());
    json.writeArrayFieldStart("workings");
    for (WorkingShown working : explanation.workings()) {
      working(working);
    }
    json.writeEndArray();
    json.writeStringField("possible_reading", finding.possibleReading());
    Settlement settlement = settled.apply(finding);
    json.writeStringField("settled", settlement == null ? "" : settlement.told());
    json.writeEndObject();
  }

  private void working(WorkingShown working) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", working.name());
    json.writeStringField("meaning", working.meaning());
    json.writeStringField("formula", working.formula());
    json.writeStringField("with_numbers", working.withNumbers());
    json.writeStringField("result", working.result());
    json.writeStringField("source", working.source());
    strings("lacking", working.lacking());
    strings("assumed", working.assumed());
    json.writeEndObject();
  }

  private void source(Source source) throws IOException {
    json.writeObjectFieldStart("source");
    json.writeStringField("basis", source.basis().label());
    json.writeStringField("title", source.title());
    json.writeStringField("section", source.section());
    json.writeStringField("edition", source.edition());
    json.writeStringField("read", source.read() == null ? "" : source.read().toString());
    json.writeStringField("address", source.address());
    json.writeStringField("note", source.note());
    json.writeEndObject();
  }

  private void strings(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private static String day(double days) {
    return Double.isNaN(days) || Double.isInfinite(days)
        ? ""
        : LocalDate.ofEpochDay((long) days).toString();
  }

  @Override
  public void close() throws IOException {
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.close();
  }
}
