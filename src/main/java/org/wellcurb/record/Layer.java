package org.wellcurb.record;

import org.wellcurb.quantity.Interval;

/**
 * One layer of the driller's log.
 *
 * @param from top, metres below the datum of the record
 * @param to bottom, metres below the datum of the record
 * @param material what was met, as written
 */
public record Layer(Interval from, Interval to, String material) {}
