/**
 * The rule language: parse, check dimensions, compile, print. May import quantity, record,
 * workings.
 */
@NullMarked
package org.wellcurb.formula;

import org.jspecify.annotations.NullMarked;
