package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;

/** Where records stand, one map for each pack: places of two authorities may lie far apart. */
public final class Maps {
  private final List<MapCells> cells = new ArrayList<>();

  /**
   * @param packs how many packs judge
   * @param metres no square is smaller than this
   */
  public Maps(int packs, double metres) {
    for (int i = 0; i < packs; i++) {
      cells.add(new MapCells(metres));
    }
  }

  /** The map of the pack at this place. */
  public MapCells of(int pack) {
    return cells.get(pack);
  }

  /** Adds what the next part counted. */
  public void add(Maps next) {
    for (int i = 0; i < cells.size(); i++) {
      cells.get(i).add(next.cells.get(i));
    }
  }

  public void clear() {
    cells.forEach(MapCells::clear);
  }
}
