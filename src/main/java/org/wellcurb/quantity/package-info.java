/**
 * Dimensions, units, intervals and bounds; reading and printing of amounts and dates. Imports
 * nothing of ours.
 */
@NullMarked
package org.wellcurb.quantity;

import org.jspecify.annotations.NullMarked;
