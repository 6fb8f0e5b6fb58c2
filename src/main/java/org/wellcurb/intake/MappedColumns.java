package org.wellcurb.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of a header map: a column, or several, and the entry that they fill, or several.
 *
 * @param columns one; or those that are combined
 * @param combine how several make one text
 * @param separator what stands between texts that are combined
 * @param splits what may stand between parts that are split: the first counts that gives as many
 *     parts as there are targets
 * @param unitFrom the column that states the unit; null if none does
 * @param targets one; or those that the parts of a split cell go to, in order
 */
public record MappedColumns(
    List<ColumnName> columns,
    Combine combine,
    String separator,
    List<String> splits,
    @Nullable UnitColumn unitFrom,
    List<Target> targets) {

  public MappedColumns {
    columns = List.copyOf(columns);
    splits = List.copyOf(splits);
    targets = List.copyOf(targets);
  }

  boolean isSplit() {
    return targets.size() > 1;
  }
}
