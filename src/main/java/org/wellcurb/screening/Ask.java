package org.wellcurb.screening;

/**
 * An entry worth asking for.
 *
 * @param entry key of the entry
 * @param settles how many outcomes that cannot be told name it among what would settle them
 */
public record Ask(String entry, int settles) {}
