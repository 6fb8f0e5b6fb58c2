/**
 * The entry catalogue, the record (arrays over the catalogue) and its place in the source. May
 * import quantity.
 */
@NullMarked
package org.wellcurb.record;

import org.jspecify.annotations.NullMarked;
