package org.wellcurb.record;

/** What a depth or height is measured from. */
public enum Datum {
  /** Not a depth. */
  NONE,
  /** From finished ground, always. */
  GROUND,
  /** From what {@code record.datum} says. */
  RECORD,
  /** From what {@code water.datum} says, or {@code record.datum} where that is blank. */
  WATER,
  /** From what {@code pump.datum} says, or {@code record.datum} where that is blank. */
  PUMP;

  /** True for entries that move when depths are brought to ground level. */
  public boolean isMovable() {
    return this == RECORD || this == WATER || this == PUMP;
  }

  static Datum of(String label) {
    return switch (label) {
      case "" -> NONE;
      case "ground" -> GROUND;
      case "datum" -> RECORD;
      case "water datum" -> WATER;
      case "pump datum" -> PUMP;
      default -> throw new IllegalArgumentException("no such datum: " + label);
    };
  }
}
