/** Commands. Thin: they ask batch, report, rulepack, intake. */
@NullMarked
package org.wellcurb.cli;

import org.jspecify.annotations.NullMarked;
