package org.wellcurb.desk;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.Column;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.Sources;
import org.wellcurb.intake.TableSource;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.EntryNotes;
import org.wellcurb.report.KnownWords;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.NamedElsewhere;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.Screener;

/** What the desk says to what its page asks, as JSON. Records are read as any file of a run is. */
final class Answers {
  private static final JsonMapper JSON = new JsonMapper();
  private static final String JURISDICTION = "record.jurisdiction";

  /** JPEG, PNG, GIF, TIFF, PDF, and the older form of office files. */
  private static final List<String> PICTURES =
      List.of(
          "\u00FF\u00D8\u00FF",
          "\u0089PNG",
          "GIF8",
          "II*\0",
          "MM\0*",
          "%PDF",
          "\u00D0\u00CF\u0011\u00E0");

  private static final int MOST_START = 8;

  private final List<Screener> screeners;
  private final LocalDate asOf;
  private final PageStyle style;
  private final Pages pages;
  private final Words words;

  Answers(List<Pack> packs, LocalDate asOf, PageStyle style) {
    this.asOf = asOf;
    this.style = style;
    pages = new Pages(style);
    words = Words.in(style.language());
    screeners = packs.stream().map(pack -> new Screener(pack, asOf, style.speech())).toList();
  }

  /** An answer; where something fails inside, a problem that says so, for the form is not lost. */
  String whole(Supplier<String> answer) {
    try {
      return answer.get();
    } catch (RuntimeException | LinkageError | StackOverflowError e) {
      return problem(words.say("desk.failed"));
    }
  }

  /** What is said of a body past the bound. */
  String large(String name) {
    String what = name.isEmpty() ? words.say("desk.form") : name;
    return problem(words.say("desk.large", what, Bounds.DESK_BODY >> 20));
  }

  /**
   * The sheet of a record, how many findings it has and rules that cannot be told, and what there
   * is to say beside its entries.
   *
   * @param comma what a comma inside a number means on this form
   */
  String check(byte[] body, Comma comma) {
    CellStyle cells = CellStyle.PLAIN.withComma(comma);
    Opened opened = open("form.json", body, 1, cells);
    if (opened.records.isEmpty()) {
      return problem(opened.problem);
    }
    WellRecord record = opened.records.get(0);
    Screener screener = screener(record);
    RecordResult result = screener.result(record);
    ObjectNode answer = JSON.createObjectNode();
    answer.put("findings", result.findings().size());
    answer.put(
        "untold",
        result.results().stream().filter(r -> r.outcome() == Outcome.CANNOT_TELL).count());
    int bare = BareNumbers.count(record, body, form -> open("form.json", form, 1, cells).records);
    String remark = bare == 0 ? "" : words.count("desk.bare", bare);
    answer.put("bare", remark);
    answer.put("sheet", pages.formSheet(result, asOf, remark));
    answer.put("foot", pages.foot(result));
    EntryNotes said = EntryNotes.of(result, style);
    ObjectNode notes = answer.putObject("notes");
    said.notes().forEach((key, some) -> some.forEach(notes.withArrayProperty(key)::add));
    words(record, screener, notes);
    ObjectNode readings = answer.putObject("readings");
    said.readings().forEach(readings::put);
    ObjectNode places = answer.putObject("places");
    said.places().forEach((anchor, keys) -> keys.forEach(places.withArrayProperty(anchor)::add));
    return answer.toString();
  }

  /** What is to be said of free text by which the packs choose. */
  private void words(WellRecord record, Screener screener, ObjectNode notes) {
    boolean isElsewhere = !NamedElsewhere.of(record, screener.pack()).isEmpty();
    if (isElsewhere || (screeners.size() > 1 && !judges(screener, jurisdiction(record)))) {
      String pack = style.own(screener.pack().title());
      List<String> all =
          screeners.stream().flatMap(each -> each.pack().jurisdictions().stream()).toList();
      notes
          .withArrayProperty(JURISDICTION)
          .add(words.say("desk.jurisdiction", pack, String.join(", ", all)));
    }
    KnownWords.lacking(screener.pack(), record)
        .forEach(
            (key, some) ->
                notes.withArrayProperty(key).add(words.say("desk.word", String.join(", ", some))));
  }

  /** The pack that names the record's jurisdiction; where none does, the first. */
  private Screener screener(WellRecord record) {
    String said = jurisdiction(record);
    return screeners.stream()
        .filter(each -> judges(each, said))
        .findFirst()
        .orElse(screeners.get(0));
  }

  private static String jurisdiction(WellRecord record) {
    return record.written(Catalogue.standard().index(JURISDICTION)).strip();
  }

  private static boolean judges(Screener screener, String jurisdiction) {
    return screener.pack().jurisdictions().stream().anyMatch(jurisdiction::equalsIgnoreCase);
  }

  /** The records of a file, each as the page keeps it. */
  String read(String name, byte[] body) {
    if (isPicture(body)) {
      return problem(words.say("desk.picture", name));
    }
    Opened opened = open(name, body, Bounds.DESK_RECORDS, CellStyle.PLAIN);
    if (opened.records.isEmpty()) {
      return problem(name + ": " + opened.problem);
    }
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode records = answer.putArray("records");
    Set<String> unread = new LinkedHashSet<>();
    for (WellRecord record : opened.records) {
      record.extras().forEach(extra -> unread.add(extra.name()));
      ObjectNode one = records.addObject();
      one.put("name", record.id());
      one.set("record", RecordJson.of(record, opened.stated));
    }
    List<String> notes = new ArrayList<>();
    if (!opened.problem.isEmpty()) {
      notes.add(opened.problem);
    }
    if (!unread.isEmpty()) {
      notes.add(words.say("desk.unread", String.join(", ", unread)));
    }
    if (!notes.isEmpty()) {
      answer.put("note", name + ": " + String.join("; ", notes));
    }
    return answer.toString();
  }

  /** A picture or a document for print, by how such files begin. */
  private static boolean isPicture(byte[] body) {
    String start =
        new String(body, 0, Math.min(body.length, MOST_START), StandardCharsets.ISO_8859_1);
    return PICTURES.stream().anyMatch(start::startsWith);
  }

  private static String problem(String said) {
    return JSON.createObjectNode().put("problem", said).toString();
  }

  /**
   * @param problem what was set aside, or why there is no record; empty if all was read
   * @param stated the entries of which a table states the unit of bare numbers
   */
  private record Opened(List<WellRecord> records, String problem, Set<Entry> stated) {}

  private Opened open(String name, byte[] body, int most, CellStyle cells) {
    Gathered gathered = new Gathered(most, words);
    String unusable = "";
    Set<Entry> stated = new HashSet<>();
    for (Input input : Input.of(name, body)) {
      try (RecordSource source = new Sources(Catalogue.standard()).open(input)) {
        @Nullable SetAside whole = source.unusable();
        if (whole != null) {
          unusable = unusable.isEmpty() ? said(words, whole.reason()) : unusable;
          continue;
        }
        if (source instanceof TableSource table) {
          for (Column column : table.layout().columns()) {
            Entry entry = column.entry();
            if (entry != null && column.unit() != null) {
              stated.add(entry);
            }
          }
        }
        ChunkReader reader = new ChunkReader(Catalogue.standard(), cells);
        for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
          reader.read(chunk, gathered);
        }
      } catch (IOException e) {
        unusable = words.say("desk.unreadable", String.valueOf(e.getMessage()));
      }
    }
    if (gathered.records.isEmpty() && !unusable.isEmpty()) {
      return new Opened(List.of(), unusable, Set.of());
    }
    return new Opened(gathered.records, gathered.problem(), stated);
  }

  /** What a reader of files says, in the language of the page. */
  private static String said(Words words, String reason) {
    String said = words.said(reason);
    return said.isEmpty() ? reason : said;
  }

  /** Keeps the first records and counts the rest. */
  private static final class Gathered implements RecordSink {
    final List<WellRecord> records = new ArrayList<>();
    private final int most;
    private final Words words;
    private long more;
    private long setAside;
    private String reason = "";

    Gathered(int most, Words words) {
      this.words = words;
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
        String why = said(words, row.reason());
        reason = (row.column().isEmpty() ? "" : row.column() + ": ") + why;
      }
    }

    String problem() {
      if (records.isEmpty() && setAside == 0) {
        return words.say("desk.none");
      }
      String aside = setAside == 0 ? "" : words.count("desk.aside", setAside, reason);
      String cut = more == 0 ? "" : words.count("desk.more", more);
      return aside + (aside.isEmpty() || cut.isEmpty() ? "" : "; ") + cut;
    }
  }
}
