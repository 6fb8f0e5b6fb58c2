package org.wellcurb.batch;

/**
 * What a rehearsal came to.
 *
 * @param rowsRead rows read
 * @param screened records judged by both packs
 * @param setAside rows set aside
 * @param changed records with an outcome that changes
 * @param newlyShort records with a rule that falls short only under the pack tried
 * @param noLongerShort records with a rule that falls short only under the pack in use
 */
public record RehearseSummary(
    long rowsRead,
    long screened,
    long setAside,
    long changed,
    long newlyShort,
    long noLongerShort) {}
