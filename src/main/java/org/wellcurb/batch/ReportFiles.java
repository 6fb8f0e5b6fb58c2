package org.wellcurb.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.FindingsCsv;
import org.wellcurb.report.FindingsGeoJson;
import org.wellcurb.report.OutcomesCsv;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.RecordsCsv;
import org.wellcurb.report.SetAsideCsv;
import org.wellcurb.report.VariancesCsv;

/** The files that grow while a batch is screened. */
final class ReportFiles implements Closeable {
  private final Path folder;
  private final Deque<OutputStream> open = new ArrayDeque<>();
  private final OutputStream findings;
  private final OutputStream records;
  private final @Nullable OutputStream outcomes;
  private final OutputStream features;
  private final OutputStream setAside;
  private final OutputStream variances;
  private final OutputStream marks;
  private final @Nullable OutputStream noticed;
  private boolean anyFeature;

  /** The findings that wait for the notices; no output, gone before the folder is whole. */
  static final String NOTICE_LOG = ".notices";

  ReportFiles(Path folder, boolean withOutcomes, boolean withNotices, boolean withSettled)
      throws IOException {
    this.folder = folder;
    try {
      findings =
          start(
              Outputs.FINDINGS_CSV, withSettled ? FindingsCsv.SETTLED_HEADER : FindingsCsv.HEADER);
      records = start(Outputs.RECORDS_CSV, RecordsCsv.HEADER);
      outcomes = withOutcomes ? start(Outputs.OUTCOMES_CSV, OutcomesCsv.HEADER) : null;
      features = start(Outputs.FINDINGS_GEOJSON, FindingsGeoJson.START);
      setAside = start(Outputs.SET_ASIDE_CSV, SetAsideCsv.HEADER);
      variances = start(Outputs.VARIANCES_CSV, VariancesCsv.HEADER);
      marks = start(Outputs.MARKS, "");
      noticed = withNotices ? start(NOTICE_LOG, "") : null;
    } catch (IOException e) {
      closeQuietly(e);
      throw e;
    }
  }

  private OutputStream start(String name, String text) throws IOException {
    OutputStream out = Files.newOutputStream(folder.resolve(name));
    open.push(out);
    out.write(ascii(text));
    return out;
  }

  /** Adds the lines of the next part. */
  void append(PartResult result) throws IOException {
    result.findings.writeTo(findings);
    result.records.writeTo(records);
    if (outcomes != null) {
      result.outcomeLines.writeTo(outcomes);
    }
    if (result.features.length() > 0) {
      if (anyFeature) {
        features.write(ascii(FindingsGeoJson.BETWEEN));
      }
      anyFeature = true;
      result.features.writeTo(features);
    }
    result.setAsideLines.writeTo(setAside);
    result.variances.writeTo(variances);
    result.marks.writeTo(marks);
    if (noticed != null) {
      result.noticed.writeTo(noticed);
    }
  }

  /** Writes what stands at the end of files, and closes them. */
  void finish() throws IOException {
    features.write(ascii(FindingsGeoJson.END));
    close();
  }

  /** Writes a whole file. */
  static void write(Path file, ByteText text) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      text.writeTo(out);
    }
  }

  @Override
  public void close() throws IOException {
    while (!open.isEmpty()) {
      open.pop().close();
    }
  }

  private void closeQuietly(IOException cause) {
    try {
      close();
    } catch (IOException e) {
      cause.addSuppressed(e);
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
