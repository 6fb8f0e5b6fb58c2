package org.wellcurb.desk;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.Sources;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.Screener;

/** What the desk says to what its page asks, as JSON. Records are read as any file of a run is. */
final class Answers {
  private static final JsonMapper JSON = new JsonMapper();

  private final List<Screener> screeners;
  private final LocalDate asOf;
  private final Pages pages;

  Answers(List<Pack> packs, LocalDate asOf, PageStyle style) {
    this.asOf = asOf;
    pages = new Pages(style);
    screeners = packs.stream().map(pack -> new Screener(pack, asOf, style.speech())).toList();
  }

  /** The sheet of a record, and how many findings it has and rules that cannot be told. */
  String check(byte[] body) {
    Opened opened = open("form.json", body, 1);
    if (opened.records.isEmpty()) {
      return problem(opened.problem);
    }
    WellRecord record = opened.records.get(0);
    RecordResult result = screener(record).result(record);
    ObjectNode answer = JSON.createObjectNode();
    answer.put("findings", result.findings().size());
    answer.put(
        "untold",
        result.results().stream().filter(r -> r.outcome() == Outcome.CANNOT_TELL).count());
    answer.put("sheet", pages.sheet(result, asOf, ""));
    return answer.toString();
  }

  /** The pack that names the record's jurisdiction; where none does, the first. */
  private Screener screener(WellRecord record) {
    String said = record.written(Catalogue.standard().index("record.jurisdiction")).strip();
    return screeners.stream()
        .filter(s -> s.pack().jurisdictions().stream().anyMatch(said::equalsIgnoreCase))
        .findFirst()
        .orElse(screeners.get(0));
  }

  /** The records of a file, each as the page keeps it. */
  String read(String name, byte[] body) {
    if (body.length > Bounds.DESK_BODY) {
      return problem(
          name
              + ": larger than the "
              + (Bounds.DESK_BODY >> 20)
              + " MiB that the desk opens; screen it instead");
    }
    Opened opened = open(name, body, Bounds.DESK_RECORDS);
    if (opened.records.isEmpty()) {
      return problem(name + ": " + opened.problem);
    }
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode records = answer.putArray("records");
    for (WellRecord record : opened.records) {
      ObjectNode one = records.addObject();
      one.put("name", record.id());
      one.set("record", RecordJson.of(record));
    }
    if (!opened.problem.isEmpty()) {
      answer.put("note", name + ": " + opened.problem);
    }
    return answer.toString();
  }

  private static String problem(String said) {
    return JSON.createObjectNode().put("problem", said).toString();
  }

  /**
   * @param problem what was set aside, or why there is no record; empty if all was read
   */
  private record Opened(List<WellRecord> records, String problem) {}

  private static Opened open(String name, byte[] body, int most) {
    Gathered gathered = new Gathered(most);
    Input input = Input.of(name, body);
    try (RecordSource source = new Sources(Catalogue.standard()).open(input)) {
      @Nullable SetAside whole = source.unusable();
      if (whole != null) {
        return new Opened(List.of(), whole.reason());
      }
      ChunkReader reader = new ChunkReader(Catalogue.standard());
      for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
        reader.read(chunk, gathered);
      }
    } catch (IOException e) {
      return new Opened(List.of(), "cannot be read (" + e.getMessage() + ")");
    }
    return new Opened(gathered.records, gathered.problem());
  }

  /** Keeps the first records and counts the rest. */
  private static final class Gathered implements RecordSink {
    final List<WellRecord> records = new ArrayList<>();
    private final int most;
    private long more;
    private long setAside;
    private String reason = "";

    Gathered(int most) {
      this.most = most;
    }

    @Override
    public void record(WellRecord record, RawRow raw) {
      if (records.size() < most) {
        records.add(record.copy());
      } else {
        more++;
      }
    }

    @Override
    public void setAside(SetAside row) {
      setAside++;
      if (reason.isEmpty()) {
        reason = (row.column().isEmpty() ? "" : row.column() + ": ") + row.reason();
      }
    }

    String problem() {
      if (records.isEmpty() && setAside == 0) {
        return "holds no record";
      }
      String aside = setAside == 0 ? "" : setAside + " set aside (" + reason + ")";
      String cut = more == 0 ? "" : more + " more records not shown; screen the file instead";
      return aside + (aside.isEmpty() || cut.isEmpty() ? "" : "; ") + cut;
    }
  }
}
