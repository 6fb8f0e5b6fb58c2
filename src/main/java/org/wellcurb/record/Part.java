package org.wellcurb.record;

/** The part of the form that an entry belongs to; {@code record.covers} may leave a part out. */
public enum Part {
  WELL,
  PUMP,
  BOTH
}
