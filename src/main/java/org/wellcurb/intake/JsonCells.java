package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The values of one JSON object, one place an entry: where in the bytes each stands, or its text
 * where it is written with escapes.
 */
final class JsonCells {
  private final int[] from;
  private final int[] to;
  private final @Nullable String[] text;
  private final int[] order;
  private int count;

  JsonCells(int entries) {
    from = new int[entries];
    to = new int[entries];
    text = new @Nullable String[entries];
    order = new int[entries];
  }

  void clear() {
    for (int i = 0; i < count; i++) {
      text[order[i]] = null;
    }
    count = 0;
    Arrays.fill(to, 0);
  }

  /** How many entries have a value. */
  int count() {
    return count;
  }

  /** The entry of the {@code i}th value met. */
  int entry(int i) {
    return order[i];
  }

  int from(int entry) {
    return from[entry];
  }

  int to(int entry) {
    return to[entry];
  }

  /** Its text; null if it is to be read from the bytes. */
  @Nullable String text(int entry) {
    return text[entry];
  }

  void put(int entry, String value) {
    order[count++] = entry;
    text[entry] = value;
  }

  /**
   * Keeps the scalar at which the parser stands.
   *
   * @param base place in the bytes at which the parser began
   */
  void put(int entry, JsonParser parser, byte[] bytes, int base) throws IOException {
    int start = base + (int) parser.currentTokenLocation().getByteOffset();
    int length = parser.getTextLength();
    if (parser.currentToken() == JsonToken.VALUE_STRING) {
      start++;
      int end = start + length;
      boolean plain =
          end < bytes.length && bytes[end] == '"' && (length == 0 || bytes[end - 1] != '\\');
      if (!plain) {
        put(entry, parser.getText());
        return;
      }
    }
    order[count++] = entry;
    from[entry] = start;
    to[entry] = start + length;
  }
}
