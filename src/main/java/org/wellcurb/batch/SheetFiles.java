package org.wellcurb.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.FindingSentence;
import org.wellcurb.report.FindingsJson;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.Pages;
import org.wellcurb.report.RecordLine;
import org.wellcurb.report.SafeNames;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.Screener;

/** Writes the record sheets and {@code findings.json}, in input order. */
final class SheetFiles {
  private static final String INDEX_FROM_SHEET = "../" + Outputs.INDEX;

  private final Path folder;
  private final Plan plan;
  private final Stop stop;
  private final Pages pages;
  private final Map<RecordLine, String> addresses = new LinkedHashMap<>();
  private final TreeSet<String> cautions = new TreeSet<>();

  SheetFiles(Path folder, Plan plan, Stop stop) {
    this.folder = folder;
    this.plan = plan;
    pages = new Pages(plan.request().output().style());
    this.stop = stop;
  }

  /** One record being made into a sheet. */
  private static final class Sheet {
    @Nullable RecordResult result;
    byte[] html = new byte[0];
    String address = "";
  }

  /** A record with the address of its sheet. */
  private record Named(Flagged flagged, String address) {}

  /** Writes a sheet for each of these records. */
  void write(List<Flagged> chosen) throws IOException, RunFailure, InterruptedException {
    List<Flagged> inOrder = new ArrayList<>(chosen);
    inOrder.sort(Flagged.INPUT_ORDER);
    SafeNames names = new SafeNames();
    Deque<Named> named = new ArrayDeque<>();
    for (Flagged flagged : inOrder) {
      String address = Outputs.SHEETS + "/" + names.name(flagged.line().recordId(), ".html");
      addresses.put(flagged.line(), address);
      named.add(new Named(flagged, address));
    }
    if (!named.isEmpty()) {
      Files.createDirectory(folder.resolve(Outputs.SHEETS));
    }
    FindingSentence sentence = new FindingSentence(plan.request().output().style());
    LocalDate asOf = plan.request().asOf();
    OutputStream out = Files.newOutputStream(folder.resolve(Outputs.FINDINGS_JSON));
    try (FindingsJson json = new FindingsJson(out, asOf, sentence::of, plan.settled()::of)) {
      Pipeline.<Named, Sheet>run(
          named::poll,
          plan.request().workers(),
          this::work,
          Sheet::new,
          sheet -> {
            stop.check();
            Files.write(folder.resolve(sheet.address), sheet.html);
            RecordResult result = Objects.requireNonNull(sheet.result);
            json.put(result, sheet.address);
            cautions.addAll(result.cautions());
            sheet.result = null;
          });
    }
  }

  /** The address of the sheet of each record that has one. */
  Map<RecordLine, String> addresses() {
    return addresses;
  }

  /** Keys of the cautions that apply to any of these records, in order. */
  List<String> cautions() {
    return List.copyOf(cautions);
  }

  private Pipeline.Work<Named, Sheet> work() {
    LocalDate asOf = plan.request().asOf();
    List<Screener> screeners = new ArrayList<>();
    for (Pack pack : plan.packs()) {
      screeners.add(new Screener(pack, asOf, plan.request().output().style().speech()));
    }
    return (named, sheet) -> {
      Flagged flagged = named.flagged();
      RecordResult result = screeners.get(flagged.pack()).result(flagged.record());
      sheet.result = result;
      sheet.address = named.address();
      sheet.html =
          pages
              .sheet(result, asOf, INDEX_FROM_SHEET, plan.settled()::of)
              .getBytes(StandardCharsets.UTF_8);
    };
  }
}
