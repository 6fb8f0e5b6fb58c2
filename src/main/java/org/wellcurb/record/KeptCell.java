package org.wellcurb.record;

import org.jspecify.annotations.Nullable;

/**
 * A short cell and what it was read as.
 *
 * @param head its first eight bytes, the first lowest; zeros where it is shorter
 * @param tail its next eight bytes
 * @param before how many of its bytes are outer blanks, in front
 * @param after how many of its bytes come before the outer blanks behind
 */
record KeptCell(
    long head,
    long tail,
    int before,
    int after,
    byte state,
    double lo,
    double hi,
    double halfPlace,
    byte unit,
    byte note,
    @Nullable String text) {}
