/**
 * The words of pages in each language, and amounts as pages print them. Imports formula, record,
 * quantity, nothing of report.
 */
@NullMarked
package org.wellcurb.report.words;

import org.jspecify.annotations.NullMarked;
