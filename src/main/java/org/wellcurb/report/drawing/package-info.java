/**
 * Drawings of one record, as SVG without scripts, each with its text beside it. Imports report's
 * words, and the rooms that report may import.
 */
@NullMarked
package org.wellcurb.report.drawing;

import org.jspecify.annotations.NullMarked;
