package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/**
 * Columns that are probably the top, the bottom and the material of a layer.
 *
 * @param from place of the column of the top, from 0; -1 if there is none
 * @param to that of the bottom
 * @param material that of the material
 * @param isOfRow true where each row is one layer; false where a row holds several
 * @param unit the unit of the depths
 * @param unitFrom the column that names it row by row; empty where none does
 * @param isUnitUnsaid true where nothing states the unit
 */
record LayerGuess(
    int from,
    int to,
    int material,
    boolean isOfRow,
    @Nullable Unit unit,
    String unitFrom,
    boolean isUnitUnsaid) {}
