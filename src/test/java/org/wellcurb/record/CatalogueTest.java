package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/** What must hold of every entry, so that whoever adds one is told what is missing. */
class CatalogueTest {
  private static final List<Entry> ENTRIES = Catalogue.standard().entries();

  @Test
  void everyEntrySaysWhatItMeansInOneLine() {
    for (Entry entry : ENTRIES) {
      assertFalse(entry.meaning().isBlank(), entry.key());
      assertFalse(entry.meaning().contains("\n"), entry.key());
      assertEquals(entry.meaning().strip(), entry.meaning(), entry.key());
    }
  }

  private static Entry entry(String key) {
    return ENTRIES.stream().filter(each -> each.key().equals(key)).findFirst().orElseThrow();
  }

  @Test
  void whatReachesDownToNothingOnlyAsItCannotBeLessHasNoLowerEnd() {
    Interval reading = new Interval(0, 5);
    Interval open = new Interval(Double.NEGATIVE_INFINITY, 5);
    assertEquals(open, entry("relief.setting").said(reading));
    assertEquals(reading, entry("water.static_level").said(reading), "may stand above ground");
    assertEquals(reading, entry("dates.received").said(reading));
    assertEquals(Interval.point(0), entry("relief.setting").said(Interval.point(0)));
    assertEquals(
        new Interval(2, 5), entry("relief.setting").said(new Interval(2, 5)), "an end of its own");
  }

  @Test
  void keysAreLowerCaseWordsJoinedByDots() {
    for (Entry entry : ENTRIES) {
      assertTrue(entry.key().matches("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)?"), entry.key());
    }
  }

  /** A key that is the first part of another could not be both in a JSON object. */
  @Test
  void noKeyIsTheObjectOfAnother() {
    Set<String> objects = new HashSet<>();
    for (Entry entry : ENTRIES) {
      int dot = entry.key().indexOf('.');
      if (dot > 0) {
        objects.add(entry.key().substring(0, dot));
      }
    }
    for (Entry entry : ENTRIES) {
      assertFalse(objects.contains(entry.key()), entry.key());
    }
    assertFalse(objects.contains("setbacks"));
  }

  @Test
  void theFirstEntryIsTheNumberOfTheRecord() {
    assertEquals("record.id", ENTRIES.get(0).key());
    for (int i = 0; i < ENTRIES.size(); i++) {
      assertEquals(i, ENTRIES.get(i).index());
    }
  }

  @Test
  void choicesAreDistinctLowerCaseAndOnlyOfChoices() {
    for (Entry entry : ENTRIES) {
      assertEquals(entry.kind() == Kind.CHOICE, !entry.choices().isEmpty(), entry.key());
      Set<String> seen = new HashSet<>();
      for (String choice : entry.choices()) {
        assertTrue(seen.add(choice), entry.key() + " " + choice);
        assertEquals(choice.strip().toLowerCase(Locale.ROOT), choice, entry.key());
        assertEquals(seen.size() - 1, entry.choice(" " + choice.toUpperCase(Locale.ROOT) + " "));
      }
      assertFalse(entry.kind() == Kind.CHOICE && entry.choices().size() < 2, entry.key());
    }
  }

  @Test
  void otherSpellingsMeanTheirOwnChoiceOnly() {
    for (Entry entry : ENTRIES) {
      assertEquals(entry.choices().size(), entry.spellings().size(), entry.key());
      for (int i = 0; i < entry.choices().size(); i++) {
        for (String spelling : entry.spellings().get(i)) {
          assertEquals(spelling.strip().toLowerCase(Locale.ROOT), spelling, entry.key());
          assertFalse(entry.choices().contains(spelling), entry.key() + " " + spelling);
          assertEquals(i, entry.choice(spelling), entry.key() + " " + spelling);
        }
      }
    }
  }

  @Test
  void amountsHaveUnitsOfTheirKindInBothSystems() {
    for (Entry entry : ENTRIES) {
      boolean amount = entry.kind().isAmount() && entry.kind() != Kind.DATE;
      Unit us = entry.unit(UnitSystem.US);
      Unit metric = entry.unit(UnitSystem.METRIC);
      assertEquals(amount, us != null, entry.key());
      assertEquals(amount, metric != null, entry.key());
      if (us != null && metric != null) {
        assertEquals(entry.kind().dimension(), us.dimension(), entry.key());
        assertEquals(entry.kind().dimension(), metric.dimension(), entry.key());
        assertFalse(us.system() == UnitSystem.METRIC, entry.key());
        assertFalse(metric.system() == UnitSystem.US, entry.key());
        assertEquals(us.equals(Units.ONE), metric.equals(Units.ONE), entry.key());
      }
    }
  }

  @Test
  void amountsHaveAPlausibleRangeThatIsMoreThanAPoint() {
    for (Entry entry : ENTRIES) {
      if (entry.kind().isAmount() && entry.kind() != Kind.DATE) {
        assertFalse(entry.plausible().isAll(), entry.key());
        assertTrue(entry.plausible().lo() < entry.plausible().hi(), entry.key());
      } else {
        assertTrue(entry.plausible().isAll(), entry.key());
      }
    }
  }

  /** Only depths and heights have a datum, and all that the name calls a depth has one. */
  @Test
  void depthsSayWhatTheyAreMeasuredFrom() {
    for (Entry entry : ENTRIES) {
      if (entry.datum() != Datum.NONE) {
        assertTrue(entry.kind() == Kind.LENGTH || entry.kind() == Kind.LIST, entry.key());
      }
      if (entry.key().endsWith("depth") || entry.key().endsWith("_level")) {
        assertFalse(entry.datum() == Datum.NONE, entry.key());
      }
    }
  }

  @Test
  void everyPartOfTheFormHasEntries() {
    for (Part part : Part.values()) {
      assertTrue(ENTRIES.stream().anyMatch(e -> e.part() == part), part.name());
    }
    assertNotNull(Catalogue.standard().find("well.depth"));
  }

  @Test
  void aSlipOfTheKeyFindsTheKeyThatWasMeant() {
    assertEquals("relief.setting", Catalogue.standard().nearest("relief.seting"));
    assertEquals("pump.intake_depth", Catalogue.standard().nearest("pump.intake_dpeth"));
  }
}
