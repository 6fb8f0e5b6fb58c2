package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** What must hold of whatever is read. */
final class Bytes {
  private Bytes() {}

  static byte[] after(String text, byte[] rest) {
    byte[] before = text.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(before, before.length + rest.length);
    System.arraycopy(rest, 0, all, before.length, rest.length);
    return all;
  }

  /** Reads bytes whole and in small pieces: the same comes of both, and every row is there. */
  static void check(String name, byte[] bytes) {
    Gathered whole = Gathered.of(name, bytes, RowSplitter.CHUNK);
    Gathered pieces = Gathered.of(name, bytes, 33);
    String text = Arrays.toString(bytes);
    if (!whole.told().equals(pieces.told())) {
      throw new AssertionError("it matters how it is cut: " + text);
    }
    reconcile(whole, text);
  }

  static void reconcile(Gathered all, String of) {
    long aside = all.aside.stream().filter(a -> !a.isFile()).count();
    if (all.rows != all.recordCount + all.joinedRows + aside
        || all.recordCount != all.records.size()) {
      throw new AssertionError("rows were lost or made up: " + of);
    }
    for (SetAside row : all.aside) {
      if (row.reason().isBlank()) {
        throw new AssertionError("set aside without a reason: " + of);
      }
    }
  }
}
