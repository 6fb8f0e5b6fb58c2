/**
 * Pure engineering functions, one class a subject, and the catalogue of named workings. May import
 * quantity, record.
 */
@NullMarked
package org.wellcurb.workings;

import org.jspecify.annotations.NullMarked;
