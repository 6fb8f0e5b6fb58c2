package org.wellcurb.crosscheck;

/**
 * What each rule said of a record, two bits a rule: only whether it could be told, and whether the
 * record falls short. Rules stand in the order of the pack that judged.
 */
public final class Told {
  /** Not told: the rule does not apply, is waived, or cannot be told. */
  public static final int NOT = 0;

  public static final int MEETS = 1;
  public static final int FALLS_SHORT = 2;

  private static final int IN_BYTE = 4;

  /** Rules in a word. */
  static final int IN_WORD = 32;

  private Told() {}

  /** Bytes that so many rules take. */
  static int bytes(int rules) {
    return (rules + IN_BYTE - 1) / IN_BYTE;
  }

  /**
   * Packs what all rules said.
   *
   * @param told by rule
   */
  static void put(byte[] into, byte[] told) {
    int rule = 0;
    for (int i = 0; i < into.length; i++) {
      int bits = 0;
      for (int shift = 0; shift < 8 && rule < told.length; shift += 2) {
        bits |= told[rule++] << shift;
      }
      into[i] = (byte) bits;
    }
  }

  /** Words that so many rules take. */
  static int words(int rules) {
    return (rules + IN_WORD - 1) / IN_WORD;
  }

  /**
   * What the rules said, in words: two bits a rule, from the lowest up.
   *
   * @param count words to read
   */
  static void words(byte[] from, int at, int end, long[] into, int count) {
    for (int word = 0; word < count; word++) {
      long bits = 0;
      int first = at + 8 * word;
      for (int i = Math.min(8, end - first) - 1; i >= 0; i--) {
        bits = (bits << 8) | (from[first + i] & 0xFF);
      }
      into[word] = bits;
    }
  }
}
