package org.wellcurb.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** The columns of the big file, grouped as the form is. */
final class Columns {
  private static final String GROUPED =
      """
      record.id record.jurisdiction record.covers record.datum record.units
      dates.permit dates.started dates.completed dates.tested dates.pump_installed dates.received
      dates.sampled
      driller.licence
      installer.licence
      well.tag well.use well.method well.depth well.drilled_depth well.bore_diameter
      well.casing_depth well.casing_diameter well.casing_material well.casing_joint well.stickup
      well.open_hole well.rock_depth well.drive_shoe well.cap well.head well.vent_screened
      grout.material grout.top grout.bottom grout.method
      water.static_level water.pumping_level water.test_method water.test_rate
      water.test_duration water.yield
      pump.type pump.intake_depth pump.rated_flow pump.power pump.voltage pump.phase pump.control
      pump.running_current pump.service_factor_current pump.insulation_resistance
      drop_pipe.material drop_pipe.inside_diameter drop_pipe.length drop_pipe.pressure_rating
      pitless.fitted pitless.depth
      service_line.material service_line.length service_line.burial_depth
      wire.gauge wire.length wire.material wire.grounding wire.casing_bonded
      pressure.cut_in pressure.cut_out pressure.switch_height
      tank.precharge tank.volume tank.count tank.type
      relief.fitted relief.setting
      disinfection.done disinfection.dose disinfection.contact_time
      sample.coliform sample.nitrate
      site.latitude site.longitude site.zone site.bedrooms
      setback.septic_tank setback.absorption_field setback.property_line
      """;

  /** Keys, in the order of the columns. */
  static final List<String> KEYS = List.of(GROUPED.strip().split("\\s+"));

  /** Headers: the key, with the unit of its bare numbers. */
  static final List<String> HEADERS = headers();

  private static final Set<String> NUMBERS = numbers();

  private Columns() {}

  static boolean isNumber(String key) {
    return NUMBERS.contains(key);
  }

  private static Entry entry(String key) {
    return Catalogue.standard().entry(Catalogue.standard().index(key));
  }

  private static List<String> headers() {
    List<String> headers = new ArrayList<>();
    for (String key : KEYS) {
      Unit unit = entry(key).usUnit();
      headers.add(unit == null || unit.symbol().isEmpty() ? key : key + " [" + unit.symbol() + "]");
    }
    return headers;
  }

  private static Set<String> numbers() {
    Set<String> numbers = new HashSet<>();
    for (String key : KEYS) {
      Kind kind = entry(key).kind();
      if (kind.isAmount() && kind != Kind.DATE) {
        numbers.add(key);
      }
    }
    return numbers;
  }
}
