package org.wellcurb.intake;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The forms in which records come, told by the end of a file's name. */
enum Form {
  TABLE(".csv", ".tsv", ".txt"),
  JSON(".json"),
  JSON_LINES(".jsonl", ".ndjson"),
  SHEETS(".xlsx"),
  PACKED(".gz"),
  ARCHIVE(".zip");

  private final String[] ends;

  Form(String... ends) {
    this.ends = ends;
  }

  /** The form that a name promises; null if it promises none. */
  static @Nullable Form of(String name) {
    String folded = name.toLowerCase(Locale.ROOT);
    for (Form form : values()) {
      for (String end : form.ends) {
        if (folded.endsWith(end)) {
          return form;
        }
      }
    }
    return null;
  }

  /** The form of what is packed in a {@code .gz}, by the name without that end. */
  static @Nullable Form ofPacked(String name) {
    return of(name.substring(0, name.length() - ".gz".length()));
  }
}
