/**
 * What only a whole batch shows: duplicates, copied values, neighbours, rates. May import
 * screening, record, quantity.
 */
@NullMarked
package org.wellcurb.crosscheck;

import org.jspecify.annotations.NullMarked;
