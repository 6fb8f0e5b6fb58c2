package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Kind;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/** Beside each box of a blank form stands how it is to be filled. */
class BlankPageTest {
  private static PageStyle style(Language language) {
    return new PageStyle(language, UnitsShown.AS_WRITTEN);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theOrderOfADateStandsBesideEachOne(Language language) {
    String date = Words.in(language).say("blank.date");
    int dates = 0;
    for (BlankPage.FieldGroup group :
        BlankPage.of(Catalogue.standard(), style(language)).groups()) {
      for (BlankPage.Field field : group.fields()) {
        boolean isDate = Catalogue.standard().find(field.key()).kind() == Kind.DATE;
        assertEquals(isDate, field.units().equals(List.of(date)), field.key());
        dates += isDate ? 1 : 0;
      }
    }
    assertTrue(dates > 10, "dates: " + dates);
  }

  @Test
  void aPositionSaysWhichWayIsMinus() {
    List<BlankPage.Field> fields =
        BlankPage.of(Catalogue.standard(), style(Language.EN)).groups().stream()
            .flatMap(group -> group.fields().stream())
            .filter(field -> field.key().endsWith("itude"))
            .toList();
    assertEquals(4, fields.size());
    for (BlankPage.Field field : fields) {
      boolean isWest = field.key().endsWith("longitude");
      assertTrue(field.units().get(0).contains(isWest ? "west" : "south"), field.toString());
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void thereIsAPlaceToSign(Language language) {
    String page = new Pages(style(language)).blank(Catalogue.standard());
    assertTrue(page.contains(Words.in(language).say("blank.signature")), page);
  }

  /** Who asks for one system gets its units, and bare numbers are said to be in it. */
  @ParameterizedTest
  @EnumSource(UnitsShown.class)
  void theUnitsAreThoseThatAreAskedFor(UnitsShown units) {
    String page = new Pages(new PageStyle(Language.EN, units)).blank(Catalogue.standard());
    assertEquals(units != UnitsShown.METRIC, page.contains(">ft"), page);
    assertEquals(units != UnitsShown.US, page.contains(">m<") || page.contains(" | m<"), page);
    assertEquals(units == UnitsShown.AS_WRITTEN, page.contains("Ring the unit"), page);
    String ticked = "<span class=\"tick ticked\">×</span>";
    assertEquals(units == UnitsShown.US, page.contains(ticked + "US<"), page);
    assertEquals(units == UnitsShown.METRIC, page.contains(ticked + "metric<"), page);
  }

  /** At the desk each amount may be in either, whatever the pages show. */
  @Test
  void theDeskOffersBothUnits() {
    String desk =
        new Pages(new PageStyle(Language.EN, UnitsShown.METRIC))
            .desk(Catalogue.standard(), List.of(), "t");
    assertTrue(desk.contains("ft | m"), desk);
  }
}
