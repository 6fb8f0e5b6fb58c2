package org.wellcurb.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.PassedOver;
import org.wellcurb.intake.SetAside;
import org.wellcurb.report.InputLine;

/** What the inputs of a run came to, one after the other, as their parts are merged in order. */
final class InputLedger {
  private final List<InputCounts> inputs = new ArrayList<>();
  private @Nullable InputCounts reading;
  private long filesSetAside;
  private String firstFileSetAside = "";
  private final List<String> brokenOff = new ArrayList<>();

  /**
   * Adds a part.
   *
   * @param cells what reading it met; null for a part of a file that was set aside whole
   */
  void take(Part part, @Nullable ChunkTally cells, long screened, long setAside) {
    InputCounts input = reading == null ? new InputCounts(part.input(), part.source()) : reading;
    reading = input;
    if (cells != null && cells.isBrokenOff()) {
      brokenOff.add(part.source().file());
    }
    if (cells != null) {
      input.add(cells, screened, setAside);
    }
    if (!part.isEnd()) {
      return;
    }
    SetAside unusable = part.source().unusable();
    if (unusable != null) {
      filesSetAside++;
      if (firstFileSetAside.isEmpty()) {
        firstFileSetAside = unusable.file() + ": " + unusable.reason();
      }
    }
    inputs.add(input);
    reading = null;
  }

  /** Files that were set aside whole. */
  long filesSetAside() {
    return filesSetAside;
  }

  /** The first file that was set aside whole, and why; empty if none was. */
  String firstFileSetAside() {
    return firstFileSetAside;
  }

  /** Files that break off, so that rows are missing. */
  List<String> brokenOff() {
    return List.copyOf(brokenOff);
  }

  /** What the report says of each input that was read. */
  List<InputLine> lines(Inputs of, Hashes hashes)
      throws IOException, RunFailure, InterruptedException {
    List<InputLine> lines = new ArrayList<>();
    for (InputCounts input : inputs) {
      lines.add(input.line(hashes.of(of.inputs().get(input.place()).path())));
    }
    return lines;
  }

  /** Why files of the folders given were not read, by file. */
  static Map<String, String> notRead(Inputs of) {
    Map<String, String> notRead = new LinkedHashMap<>();
    for (PassedOver file : of.passedOver()) {
      notRead.put(file.file(), file.reason());
    }
    return notRead;
  }
}
