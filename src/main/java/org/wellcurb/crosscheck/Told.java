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

  private Told() {}

  /** Bytes that so many rules take. */
  static int bytes(int rules) {
    return (rules + IN_BYTE - 1) / IN_BYTE;
  }

  /** Puts what one rule said into bytes that are 0 before. */
  static void put(byte[] into, int rule, int told) {
    into[rule / IN_BYTE] |= (byte) (told << (2 * (rule % IN_BYTE)));
  }

  /** What one rule said. */
  static int get(byte[] from, int at, int rule) {
    return (from[at + rule / IN_BYTE] >>> (2 * (rule % IN_BYTE))) & 3;
  }
}
