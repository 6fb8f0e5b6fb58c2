package org.wellcurb.intake;

/** Which value counts where several rows make one record. */
public enum OfSeveral {
  FIRST("first"),
  LAST("last"),
  LEAST("least"),
  MOST("most"),
  /** From the least to the most. */
  RANGE("range");

  private final String label;

  OfSeveral(String label) {
    this.label = label;
  }

  /** How a header map writes it. */
  public String label() {
    return label;
  }
}
