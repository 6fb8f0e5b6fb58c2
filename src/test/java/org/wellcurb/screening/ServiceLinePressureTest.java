package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

  private static double shown(double switchHeight) throws Exception {
    Map<String, String> form =
        Map.of(
            "record.datum", "ground",
            "water.static_level", STATIC + " ft",
            "pump.shutoff_pressure", SHUT_OFF + " psi",
            "pressure.cut_out", "60 psi",
            "pressure.switch_height", switchHeight + " ft",
            "service_line.burial_depth", BURIAL + " ft",
            "relief.fitted", "no");
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    WorkingShown line =
        screener.result(RecordReader.of(form)).workings().stream()
            .filter(each -> each.name().equals("pressure_on_service_line"))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(line.result().split(" ")[0]);
  }
}
