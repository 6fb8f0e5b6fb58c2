package org.wellcurb.intake;

import org.wellcurb.record.Entry;

/**
 * A column and an entry, and how alike they are.
 *
 * @param header how the header was read
 * @param likeness 2 where the header is the key, 0 where only what stands in the column tells
 */
record ColumnMatch(int column, Entry entry, HeaderWords header, double likeness) {}
