package org.wellcurb.judgement;

/** The outcomes of one rule on records side by side: each asked for is in one of the four sets. */
final class OutcomeLanes {
  long meets;
  long fallsShort;
  long cannotTell;
  long notApplicable;

  void clear() {
    meets = 0;
    fallsShort = 0;
    cannotTell = 0;
    notApplicable = 0;
  }

  /** Adds a record by the ordinal of its outcome. */
  void put(int lane, int outcome) {
    long bit = 1L << lane;
    switch (Outcome.at(outcome)) {
      case MEETS -> meets |= bit;
      case FALLS_SHORT -> fallsShort |= bit;
      case CANNOT_TELL -> cannotTell |= bit;
      default -> notApplicable |= bit;
    }
  }

  /** Records that are in one of the sets. */
  long all() {
    return meets | fallsShort | cannotTell | notApplicable;
  }

  /** Adds other outcomes: where a record has one already that is not alike, it cannot be told. */
  void alike(OutcomeLanes other) {
    long again = all() & other.all();
    long alike =
        (meets & other.meets)
            | (fallsShort & other.fallsShort)
            | (notApplicable & other.notApplicable)
            | (cannotTell & other.cannotTell);
    long differs = again & ~alike;
    meets = (meets | other.meets) & ~differs;
    fallsShort = (fallsShort | other.fallsShort) & ~differs;
    notApplicable = (notApplicable | other.notApplicable) & ~differs;
    cannotTell = cannotTell | other.cannotTell | differs;
  }

  /** Adds other outcomes; the milder stands: meets, not applicable, cannot tell, falls short. */
  void milder(OutcomeLanes other) {
    meets |= other.meets;
    notApplicable = (notApplicable | other.notApplicable) & ~meets;
    cannotTell = (cannotTell | other.cannotTell) & ~meets & ~notApplicable;
    fallsShort = (fallsShort | other.fallsShort) & ~meets & ~notApplicable & ~cannotTell;
  }
}
