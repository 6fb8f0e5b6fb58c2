/**
 * Big files of records made from a seed, for tests and benchmarks, and the benchmarks themselves.
 */
@NullMarked
package org.wellcurb.bench;

import org.jspecify.annotations.NullMarked;
