/** Benchmarks and the data that they run on. Not part of the program. */
@NullMarked
package org.wellcurb.bench;

import org.jspecify.annotations.NullMarked;
