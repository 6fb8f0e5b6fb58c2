package org.wellcurb.judgement;

/** What one rule says of one record. */
public enum Outcome {
  MEETS("meets"),
  FALLS_SHORT("falls short"),
  CANNOT_TELL("cannot tell"),
  NOT_APPLICABLE("not applicable"),
  WAIVED("waived");

  private static final Outcome[] ALL = values();

  private final String label;

  Outcome(String label) {
    this.label = label;
  }

  /** How packs and outputs write it. */
  public String label() {
    return label;
  }

  /** The outcome with this ordinal, without copying the array of values. */
  public static Outcome at(int ordinal) {
    return ALL[ordinal];
  }

  /** The outcome that packs write so. */
  public static Outcome of(String label) {
    for (Outcome outcome : ALL) {
      if (outcome.label.equals(label)) {
        return outcome;
      }
    }
    throw new IllegalArgumentException("no outcome is called " + label);
  }
}
