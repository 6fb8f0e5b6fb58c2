package org.wellcurb.rulepack;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Reads one source of a pack. */
final class SourceReader {
  private final Problems problems;
  private final Shapes shapes;

  SourceReader(Problems problems, Shapes shapes) {
    this.problems = problems;
    this.shapes = shapes;
  }

  /** The source; null where it cannot be read. */
  @Nullable Source read(String id, Json json) {
    Fields fields = shapes.fields(json);
    if (fields == null) {
      return null;
    }
    Json basisAt = fields.must("basis");
    Source.@Nullable Basis basis = basis(basisAt);
    boolean published = basis == Source.Basis.PUBLISHED;
    String title = published ? fields.mustLine("title") : fields.line("title");
    String section = published ? fields.mustLine("section") : fields.line("section");
    String address = published ? fields.mustLine("address") : fields.line("address");
    LocalDate read = shapes.date(fields.may("read"));
    boolean dated = fields.may("read") != null;
    String edition = published && !dated ? fields.mustLine("edition") : fields.line("edition");
    String note = fields.line("note");
    fields.done();
    if (basis == Source.Basis.COMMON_PRACTICE && basisAt != null) {
      if (!(title + section + edition + address).isEmpty() || dated) {
        problems.at(
            basisAt,
            "common practice has no text",
            "if it was read in a text, its basis is published; else keep only a note");
      }
    }
    if (basis == null) {
      return null;
    }
    return new Source(id, basis, title, section, edition, read, address, note);
  }

  private Source.@Nullable Basis basis(@Nullable Json at) {
    if (at == null) {
      return null;
    }
    if (at instanceof Json.Text text) {
      for (Source.Basis basis : Source.Basis.values()) {
        if (basis.label().equals(text.value())) {
          return basis;
        }
      }
    }
    problems.stumble(at);
    return null;
  }
}
