package org.wellcurb.screening;

/**
 * A suggestion of what was meant; never applied.
 *
 * @param entry key of the entry
 * @param written what stands there
 * @param reading what it may have been, as a sentence
 * @param rules how many broken rules it would put right
 */
public record PossibleReading(String entry, String written, String reading, int rules) {}
