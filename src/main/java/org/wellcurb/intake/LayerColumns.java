package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.CellStyle;

/**
 * Columns of a row that is one layer of the driller's log.
 *
 * @param from top; null if the log gives only bottoms. Where it is the same column as {@code to},
 *     the cell holds both ends: {@code 0 to 20 ft}
 * @param to bottom
 * @param material what was met
 * @param unit of bare numbers; null for that of the record
 * @param unitFrom the column that states the unit row by row; null if none does
 * @param style how the depths are written
 */
public record LayerColumns(
    @Nullable ColumnName from,
    ColumnName to,
    ColumnName material,
    @Nullable Unit unit,
    @Nullable UnitColumn unitFrom,
    CellStyle style) {}
