/** Wellcurb: checks as-built records of private water wells against configurable rule packs. */
@NullMarked
package org.wellcurb;

import org.jspecify.annotations.NullMarked;
