package org.wellcurb.rulepack;

import java.util.Locale;

/** The kind of finding that a rule makes when a record falls short of it. */
public enum FindingKind {
  /** A limit of the jurisdiction is not met. */
  DEFICIENCY,
  /** Entries contradict each other or physics. */
  DISCREPANCY,
  /** An entry that must be there is not. */
  OMISSION,
  /** Common practice is not followed. */
  ADVISORY;

  /** How packs and outputs write it. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
