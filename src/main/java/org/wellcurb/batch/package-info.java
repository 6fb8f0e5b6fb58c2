/**
 * A run: chunks, workers, order, merge, the fresh folder, run.json, gates. May import all rooms
 * before it.
 */
@NullMarked
package org.wellcurb.batch;

import org.jspecify.annotations.NullMarked;
