package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;

/**
 * The highest pressure on a buried line, looked for along the line: water at rest weighs 0.4335 psi
 * a foot (62.43 lb/ft3 over 144 in2), so that the pressure at a point is that at the switch and the
 * water between. The line runs from the well, at the depth of burial, to the switch.
 */
class ServiceLinePressureTest {
  private static final double PSI_PER_FOOT = 62.43 / 144;
  private static final double STATIC = 40;
  private static final double BURIAL = 5;
  private static final double SHUT_OFF = 150;

  @ParameterizedTest
  @ValueSource(doubles = {-100, -30, -8, -5, 0, 6, 30})
  void isThatOfItsLowestPoint(double switchHeight) throws Exception {
    double atSwitch = SHUT_OFF - PSI_PER_FOOT * (STATIC + switchHeight);
    double most = 0;
    for (int part = 0; part <= 100; part++) {
      double height = -BURIAL + (switchHeight + BURIAL) * part / 100;
      most = Math.max(most, atSwitch + PSI_PER_FOOT * (switchHeight - height));
    }
    // Water as the program takes it, at 60 degF, is a hair lighter: less than 0.1 %.
    assertEquals(most, shown(switchHeight), most * 1e-3);
  }

  /**
   * A constant pressure valve at the well head spares the line all but the working pressure, one in
   * the house leaves the whole of the pump on it; the form does not say where it stands.
   */
  @Test
  void ofAValveThatMayStandAtEitherEndIsARange() throws Exception {
    Map<String, String> form = form(0);
    form.put("pump.control", "constant pressure valve");
    form.put("relief.fitted", "yes");
    form.put("relief.setting", "75 psi");
    form.put("relief.capacity", "20 gpm");
    form.put("relief.valve_between", "no");
    form.put("pump.rated_flow", "10 gpm");
    double toLine = PSI_PER_FOOT * BURIAL;
    String[] range = line(form).split(" ");
    assertEquals(60 + toLine, Double.parseDouble(range[0]), 0.1);
    assertEquals(
        SHUT_OFF - PSI_PER_FOOT * STATIC + toLine,
        Double.parseDouble(range[range.length - 2]),
        0.2);
    assertEquals(Outcome.CANNOT_TELL, ofRating(form, "100 psi"));
    assertEquals(Outcome.MEETS, ofRating(form, "160 psi"));
    assertEquals(Outcome.FALLS_SHORT, ofRating(form, "60 psi"));
    form.put("pump.control", "switch");
    assertEquals(Outcome.MEETS, ofRating(form, "100 psi"));
    form.remove("pump.control");
    assertEquals(Outcome.CANNOT_TELL, ofRating(form, "100 psi"));
  }

  private static Outcome ofRating(Map<String, String> form, String rating) throws Exception {
    Map<String, String> rated = new HashMap<>(form);
    rated.put("pump.type", "submersible");
    rated.put("service_line.material", "copper");
    rated.put("service_line.pressure_rating", rating);
    return screener().result(RecordReader.of(rated)).results().stream()
        .filter(each -> each.rule().id().equals("service-line-strong-enough"))
        .findFirst()
        .orElseThrow()
        .outcome();
  }

  private static double shown(double switchHeight) throws Exception {
    return Double.parseDouble(line(form(switchHeight)).split(" ")[0]);
  }

  private static Map<String, String> form(double switchHeight) {
    return new HashMap<>(
        Map.of(
            "record.datum", "ground",
            "water.static_level", STATIC + " ft",
            "pump.shutoff_pressure", SHUT_OFF + " psi",
            "pressure.cut_out", "60 psi",
            "pressure.switch_height", switchHeight + " ft",
            "service_line.burial_depth", BURIAL + " ft",
            "relief.fitted", "no"));
  }

  private static String line(Map<String, String> form) throws Exception {
    WorkingShown line =
        screener().result(RecordReader.of(form)).workings().stream()
            .filter(each -> each.name().equals("pressure_on_service_line"))
            .findFirst()
            .orElseThrow();
    return line.result();
  }

  private static Screener screener() throws Exception {
    return new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
  }
}
