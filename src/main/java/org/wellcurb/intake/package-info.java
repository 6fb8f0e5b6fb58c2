/**
 * CSV, JSON, JSON lines, spreadsheets, archives; header maps; rows set aside. May import quantity,
 * record.
 */
@NullMarked
package org.wellcurb.intake;

import org.jspecify.annotations.NullMarked;
