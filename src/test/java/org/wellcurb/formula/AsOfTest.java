package org.wellcurb.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.workings.WorkingCatalogue;

/** The as-of date in a formula, and tables whose names hold dashes. */
class AsOfTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final int COMPLETED = CATALOGUE.index("dates.completed");

  @Test
  void aDateOnTheDayIsNotAfterIt() throws FormulaException {
    assertEquals(Truth.TRUE, onOrBefore("2026-01-01", LocalDate.of(2026, 1, 1)));
  }

  @Test
  void aDateADayLaterIsAfterIt() throws FormulaException {
    assertEquals(Truth.FALSE, onOrBefore("2026-01-01", LocalDate.of(2026, 1, 2)));
  }

  @Test
  void withoutAnAsOfDateNothingCanBeTold() throws FormulaException {
    assertEquals(Truth.UNKNOWN, onOrBefore(null, LocalDate.of(2026, 1, 2)));
  }

  @Test
  void theAsOfDateIsADate() {
    FormulaException e =
        assertThrows(
            FormulaException.class, () -> Formula.condition("well.depth <= as_of", scope()));
    assertEquals("a length and a date stand at <=", e.getMessage());
  }

  @Test
  void aTableNameMayHoldDashes() throws FormulaException {
    Formula.condition("well.casing_depth >= table(zone-2-casing)", scope());
  }

  private static int onOrBefore(@Nullable String asOf, LocalDate completed)
      throws FormulaException {
    RecordFiller filler = new RecordFiller(CATALOGUE);
    filler.clear("a.csv", 2);
    filler.date(COMPLETED, completed.toEpochDay(), completed.toEpochDay(), Note.NONE);
    Frame frame = new Frame(CATALOGUE);
    if (asOf != null) {
      frame.asOf(LocalDate.parse(asOf).toEpochDay());
    }
    frame.take(filler.record());
    return Formula.condition("dates.completed <= as_of", scope()).evaluate(frame);
  }

  private static Scope scope() {
    Table table =
        new Table(
            "zone-2-casing",
            List.of(),
            Dimension.LENGTH,
            List.of(new Table.Row(List.of(), new Table.Amount(9, Units.METRE, Double.NaN, null))));
    return new Scope() {
      @Override
      public Catalogue catalogue() {
        return CATALOGUE;
      }

      @Override
      public WorkingCatalogue workings() {
        return WorkingCatalogue.standard();
      }

      @Override
      public @Nullable Table table(String name) {
        return name.equals(table.name()) ? table : null;
      }

      @Override
      public Collection<String> tableNames() {
        return List.of(table.name());
      }

      @Override
      public double figure(String name) {
        throw new IllegalArgumentException(name);
      }
    };
  }
}
