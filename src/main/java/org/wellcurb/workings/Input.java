package org.wellcurb.workings;

/**
 * An entry that a working reads.
 *
 * @param key key of the entry
 * @param need whether the working can do without it
 */
public record Input(String key, Need need) {

  /** Whether a working can do without an input. */
  public enum Need {
    /**
     * Where it is blank the working is unknown and names it; where it is n/a the working is void.
     */
    REQUIRED,
    /** Where it is blank or n/a the function is given NaN and goes by its stated default. */
    OPTIONAL
  }

  public static Input required(String key) {
    return new Input(key, Need.REQUIRED);
  }

  public static Input optional(String key) {
    return new Input(key, Need.OPTIONAL);
  }

  public boolean isRequired() {
    return need == Need.REQUIRED;
  }
}
