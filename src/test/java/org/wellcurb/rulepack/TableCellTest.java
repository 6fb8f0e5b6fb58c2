package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** The written forms of cells and values. */
class TableCellTest {
  private static final double INCH = 0.0254;

  private static Entry entry(String key) {
    Entry entry = Catalogue.standard().find(key);
    assertTrue(entry != null, key);
    return entry;
  }

  private static Table.Range range(String text, String key) throws FormulaException {
    return (Table.Range) TableCell.read(text, entry(key));
  }

  private static void expect(
      String text, String key, double low, boolean lowIn, double high, boolean highIn)
      throws FormulaException {
    Table.Range range = range(text, key);
    assertEquals(low, range.range().lo(), 1e-12, text);
    assertEquals(high, range.range().hi(), 1e-12, text);
    assertEquals(lowIn, range.loIncluded(), text);
    assertEquals(highIn, range.hiIncluded(), text);
  }

  @Test
  void rangesOfAmounts() throws FormulaException {
    double all = Double.POSITIVE_INFINITY;
    String key = "well.casing_diameter";
    expect("6 in", key, 6 * INCH, true, 6 * INCH, true);
    expect("4 in to 6 in", key, 4 * INCH, true, 6 * INCH, true);
    expect("4 to 6 in", key, 4 * INCH, true, 6 * INCH, true);
    expect("4 1/2 in to 15 cm", key, 4.5 * INCH, true, 0.15, true);
    expect(">= 4 in", key, 4 * INCH, true, all, false);
    expect(">4 in", key, 4 * INCH, false, all, false);
    expect("<= 100 mm", key, -all, false, 0.1, true);
    expect("< 4 in", key, -all, false, 4 * INCH, false);
    expect(">= 4 in and < 6 in", key, 4 * INCH, true, 6 * INCH, false);
    expect("< 6 in and >= 4 in", key, 4 * INCH, true, 6 * INCH, false);
  }

  @Test
  void countsDaysWordsAndAny() throws FormulaException {
    expect("3", "tank.count", 3, true, 3, true);
    expect("1970-01-02 to 1970-01-11", "dates.completed", 1, true, 10, true);
    assertEquals(new Table.Any(), TableCell.read(" * ", entry("site.zone")));
    assertEquals(
        new Table.Words(List.of("north hill"), List.of("North Hill")),
        cell(" North Hill ", "site.zone"));
    assertEquals(new Table.Words(List.of("pvc")), cell("PVC", "well.casing_material"));
    assertEquals(new Table.Words(List.of("yes")), cell("Yes", "well.open_hole"));
  }

  @Test
  void aThickerWireHasASmallerGauge() throws FormulaException {
    expect("10 AWG to 14 AWG", "wire.gauge", 10, true, 14, true);
    expect("1/0 AWG", "wire.gauge", 0, true, 0, true);
    expect("4/0 AWG to 1/0 AWG", "wire.gauge", -3, true, 0, true);
    Table.Range thick = range(">= 6 mm2", "wire.gauge");
    assertTrue(thick.hiIncluded() && thick.range().hi() > 8 && thick.range().hi() < 10);
    Table.Range between = range("4 mm2 to 6 mm2", "wire.gauge");
    assertTrue(between.range().lo() < between.range().hi());
  }

  private static Table.Cell cell(String text, String key) throws FormulaException {
    return TableCell.read(text, entry(key));
  }

  @Test
  void whatIsRefused() {
    for (String bad :
        List.of("", "six", "6", "6 psi", "6 in to", "8 in to 6 in", "> 6 in and < 6 in", ">= 6")) {
      assertThrows(FormulaException.class, () -> cell(bad, "well.casing_diameter"), bad);
    }
    assertThrows(FormulaException.class, () -> cell("wood", "well.casing_material"));
    assertThrows(FormulaException.class, () -> cell("maybe", "well.open_hole"));
    assertThrows(FormulaException.class, () -> cell("1.5", "tank.count"));
    assertThrows(FormulaException.class, () -> cell("2010", "dates.completed"));
  }

  @Test
  void valuesSingleAndDual() throws FormulaException {
    Table.Amount dual = AmountText.read("6 ft (1.8 m)", Dimension.LENGTH);
    assertEquals(6 * 0.3048, dual.primary(), 1e-12);
    assertEquals(1.8, dual.bracket(), 1e-12);
    Table.Amount single = AmountText.read("-1.5", Dimension.NUMBER);
    assertEquals(-1.5, single.primary());
    assertTrue(Double.isNaN(single.bracket()));
    assertEquals(-40 + 273.15, AmountText.read("-40 degF", Dimension.TEMPERATURE).primary(), 1e-9);
    for (String bad : List.of("6 ft (6 ft)", "6 ft (2 psi)", "6 ft (1.8)", "1,000 ft", "1/0 ft")) {
      assertThrows(FormulaException.class, () -> AmountText.read(bad, Dimension.LENGTH), bad);
    }
  }
}
