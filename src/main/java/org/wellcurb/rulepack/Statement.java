package org.wellcurb.rulepack;

/**
 * Something that a proof has to say of a pack that loads.
 *
 * @param weight how much it matters
 * @param pack id of the pack
 * @param line line of its file that it is about, from 1; 0 for the whole file
 * @param about the rule, table or source that it is about; empty for the pack
 * @param text what there is to say, a clause without a full stop
 */
public record Statement(Weight weight, String pack, int line, String about, String text) {

  /** How much a statement matters. */
  public enum Weight {
    /** Rules contradict each other, or one can never count. */
    WRONG("wrong"),
    /** Something that is likely a slip: unused, unreadable, or at odds with itself. */
    DOUBTFUL("doubtful"),
    /** A limit that has not an example on both sides. */
    UNPROVED("not proved"),
    /** Worth knowing; a pack is clean with it. */
    NOTE("note");

    private final String label;

    Weight(String label) {
      this.label = label;
    }

    /** How it is printed. */
    public String label() {
      return label;
    }
  }

  /** One line: where, how much it matters, what. */
  public String sentence() {
    return pack
        + (line > 0 ? ":" + line : "")
        + (about.isEmpty() ? "" : " " + about)
        + ": "
        + weight.label()
        + ": "
        + text;
  }
}
