package org.wellcurb.batch;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.report.Cap;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;

/**
 * Findings on their way to notices. Which licences get one is known only when all records are
 * screened; until then findings wait in a file of the fresh folder, not in memory.
 */
final class NoticeLog {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  /**
   * A finding read back.
   *
   * @param licence the licence that it falls to, as written
   * @param pack place of the pack that judged
   * @param water what must be done about the water of its record, by key of its words; empty where
   *     nothing must
   * @param elsewhere the jurisdiction that its record names, where the pack is not for it; else
   *     empty
   * @param finding the finding; its number, file and what is written are whole, since the table
   *     that is sent out must name the record as the records do; other long texts are cut to {@link
   *     Cap#QUOTED_LETTERS}
   */
  record Noted(String licence, int pack, String water, String elsewhere, Finding finding) {}

  /** Adds a finding. */
  void put(String licence, int pack, int rule, String water, String elsewhere, Finding finding) {
    Deciding deciding = finding.deciding();
    try {
      text(licence);
      out.writeInt(pack);
      out.writeInt(rule);
      text(water);
      said(elsewhere);
      text(finding.recordId());
      text(finding.file());
      out.writeLong(finding.row());
      said(finding.possibleReading());
      text(deciding.entry());
      text(deciding.written());
      out.writeDouble(deciding.value());
      Unit unit = deciding.unit();
      out.writeInt(unit == null ? -1 : unit.id());
      out.writeDouble(deciding.limit());
      out.writeDouble(deciding.margin());
      said(deciding.valueText());
      said(deciding.limitText());
      out.writeBoolean(deciding.isDate());
      said(deciding.subject());
      said(deciding.limitName());
      out.writeBoolean(deciding.isStrict());
      out.writeDouble(deciding.leastMargin());
      out.writeInt(deciding.beside().size());
      for (String each : deciding.beside()) {
        said(each);
      }
      out.writeInt(finding.text());
      out.writeDouble(finding.olderDay());
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
  }

  /** A text that only a page says. */
  private void said(String text) throws IOException {
    text(Cap.QUOTED_LETTERS.cut(text));
  }

  private void text(String text) throws IOException {
    byte[] letters = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(letters.length);
    out.write(letters);
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
  }

  private static List<String> texts(DataInputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      texts.add(text(in));
    }
    return texts;
  }

  void writeTo(OutputStream file) throws IOException {
    bytes.writeTo(file);
  }

  void clear() {
    bytes.reset();
  }

  /** The next finding; null after the last. */
  static @Nullable Noted read(DataInputStream in, List<Pack> packs) throws IOException {
    in.mark(1);
    if (in.read() < 0) {
      return null;
    }
    in.reset();
    String licence = text(in);
    int pack = in.readInt();
    Rule rule = packs.get(pack).rules().get(in.readInt());
    String water = text(in);
    String elsewhere = text(in);
    String recordId = text(in);
    String file = text(in);
    long row = in.readLong();
    String reading = text(in);
    String entry = text(in);
    String written = text(in);
    double value = in.readDouble();
    int unit = in.readInt();
    double limit = in.readDouble();
    double margin = in.readDouble();
    Deciding deciding =
        new Deciding(
            entry,
            written,
            value,
            unit < 0 ? null : Units.at(unit),
            limit,
            margin,
            text(in),
            text(in),
            in.readBoolean(),
            text(in),
            text(in),
            in.readBoolean(),
            in.readDouble(),
            texts(in));
    return new Noted(
        licence,
        pack,
        water,
        elsewhere,
        new Finding(
            recordId,
            file,
            row,
            packs.get(pack).id(),
            rule,
            deciding,
            reading,
            in.readInt(),
            in.readDouble()));
  }
}
