/** The same screening on an engine for many machines. Not part of the program. */
@NullMarked
package org.wellcurb.spark;

import org.jspecify.annotations.NullMarked;
