package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * Columns of a row that is one layer of the driller's log.
 *
 * @param from top; null if the log gives only bottoms
 * @param to bottom
 * @param material what was met
 * @param unit of bare numbers; null for that of the record
 */
public record LayerColumns(
    @Nullable ColumnName from, ColumnName to, ColumnName material, @Nullable Unit unit) {}
