/** Pages, drawings, CSV, JSON, GeoJSON, notices. May import all rooms before it but intake. */
@NullMarked
package org.wellcurb.report;

import org.jspecify.annotations.NullMarked;
