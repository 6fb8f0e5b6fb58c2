package org.wellcurb.workings;

import org.wellcurb.quantity.Unit;

/**
 * A figure that a working needs and no form holds, such as the use of water a head. A pack may set
 * its own.
 *
 * @param name what packs call it
 * @param value its value in SI where no pack sets it
 * @param unit unit for printing
 * @param meaning what it is
 * @param source where the value comes from: a published source, or {@code common practice}
 */
public record Figure(String name, double value, Unit unit, String meaning, String source) {}
