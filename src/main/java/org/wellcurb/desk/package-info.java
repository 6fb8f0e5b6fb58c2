/** The local page for one record. Thin: it asks batch, report, rulepack, intake. */
@NullMarked
package org.wellcurb.desk;

import org.jspecify.annotations.NullMarked;
