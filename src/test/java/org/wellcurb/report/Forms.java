package org.wellcurb.report;

import static org.wellcurb.quantity.Units.AMPERE;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.HORSEPOWER;
import static org.wellcurb.quantity.Units.INCH;
import static org.wellcurb.quantity.Units.MEGOHM;
import static org.wellcurb.quantity.Units.METRE;
import static org.wellcurb.quantity.Units.ONE;
import static org.wellcurb.quantity.Units.PSI_UNIT;
import static org.wellcurb.quantity.Units.US_GALLON;
import static org.wellcurb.quantity.Units.VOLT;

import org.wellcurb.quantity.Note;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** Forms that the tests of pages and drawings use: full, faulty, bare, absurd, hostile. */
public final class Forms {
  private Forms() {}

  /** A full form with a few faults. */
  public static WellRecord full() {
    return new Form("FW-0417")
        .text("record.jurisdiction", "fenwick")
        .text("record.covers", "well and pump")
        .text("record.datum", "casing top")
        .text("record.units", "us")
        .date("dates.started", "2019-06-03")
        .date("dates.completed", "2019-06-05")
        .text("driller.licence", "D-118")
        .text("installer.licence", "P-77")
        .text("well.use", "household")
        .text("well.method", "rotary")
        .amount("well.depth", 305, FOOT)
        .amount("well.drilled_depth", 310, FOOT)
        .amount("well.bore_diameter", 10, INCH)
        .amount("well.casing_depth", 62, FOOT)
        .amount("well.casing_diameter", 6, INCH)
        .text("well.casing_material", "steel")
        .amount("well.stickup", 1.5, FOOT)
        .text("well.open_hole", "yes")
        .amount("well.rock_depth", 48, FOOT)
        .text("well.head", "pitless adapter")
        .text("well.cap", "vented sealed")
        .layer(0, 4, FOOT, "topsoil")
        .layer(4, 31, FOOT, "brown clay")
        .layer(31, 48, FOOT, "gravel and boulders")
        .layer(48, 140, FOOT, "grey shale")
        .layer(140, 310, FOOT, "sandstone")
        .text("grout.material", "neat cement")
        .amount("grout.top", 5, FOOT)
        .amount("grout.bottom", 60, FOOT)
        .amount("water.static_level", 44, FOOT)
        .amount("water.pumping_level", 251, FOOT)
        .text("water.test_method", "test pump")
        .amount("water.test_rate", 6, GPM)
        .range("water.yield", 5, 6, GPM, "5-6 gpm")
        .text("pump.type", "submersible")
        .amount("pump.intake_depth", 240, FOOT)
        .amount("pump.rated_flow", 10, GPM)
        .amount("pump.power", 1, HORSEPOWER)
        .amount("pump.check_valves", 2, ONE)
        .amount("pump.check_valve_spacing", 180, FOOT)
        .amount("pump.torque_arresters", 5, ONE)
        .amount("pump.torque_arrester_spacing", 45, FOOT)
        .amount("pump.voltage", 230, VOLT)
        .amount("pump.running_current", 8.1, AMPERE)
        .range("pump.insulation_resistance", 200, Double.POSITIVE_INFINITY, MEGOHM, ">200 Mohm")
        .text("pump.control", "switch")
        .amount("drop_pipe.pressure_rating", 200, PSI_UNIT)
        .amount("pitless.depth", 5, FOOT)
        .amount("service_line.burial_depth", 5, FOOT)
        .amount("service_line.pressure_rating", 160, PSI_UNIT)
        .amount("site.frost_depth", 4.5, FOOT)
        .amount("site.bedrooms", 4, ONE)
        .amount("site.occupants", 5, ONE)
        .amount("pressure.cut_in", 40, PSI_UNIT)
        .amount("pressure.cut_out", 60, PSI_UNIT)
        .amount("pressure.gauge_reading", 52, PSI_UNIT)
        .amount("tank.precharge", 42, PSI_UNIT)
        .amount("tank.volume", 44, US_GALLON)
        .amount("tank.pressure_rating", 100, PSI_UNIT)
        .text("tank.type", "diaphragm")
        .text("relief.fitted", "yes")
        .amount("relief.setting", 60, PSI_UNIT)
        .amount("setback.septic_tank", 49.9, FOOT)
        .amount("setback.absorption_field", 112, FOOT)
        .amount("setback.property_line", 12, FOOT)
        .amount("setback.building", 31, FOOT)
        .amount("setback.surface_water", 640, FOOT)
        .unreadable("setback.fuel_tank", "abt 5O paces", Note.NOT_A_NUMBER)
        .notApplicable("setback.privy")
        .text("sample.coliform", "absent")
        .variance("property-line", "V-2019-31")
        .extra("crew", "J. and two helpers")
        .record();
  }

  /** A number and nothing else. */
  public static WellRecord bare() {
    return new Form("FW-0001").record();
  }

  /** Figures that no well has, ends without end, and things the wrong way round. */
  public static WellRecord absurd() {
    double most = Double.MAX_VALUE;
    double endless = Double.POSITIVE_INFINITY;
    return new Form("FW-9999")
        .text("record.datum", "casing top")
        .range("well.stickup", -endless, 40, FOOT, "<40 ft")
        .amount("well.depth", 1e300, FOOT)
        .range("well.drilled_depth", -endless, endless, FOOT, "?")
        .amount("well.casing_depth", -50, FOOT)
        .range("water.static_level", -endless, 0, FOOT, "flowing")
        .amount("water.pumping_level", most / 10, METRE)
        .amount("pump.intake_depth", 0, FOOT)
        .amount("well.screen_top", 900, FOOT)
        .amount("well.screen_bottom", 100, FOOT)
        .amount("grout.top", 1e9, FOOT)
        .amount("grout.bottom", -1e9, FOOT)
        .amount("pump.check_valve_spacing", 1e-9, FOOT)
        .amount("pump.check_valves", 1e9, ONE)
        .amount("site.frost_depth", 1e7, FOOT)
        .layer(500, 2, FOOT, "upside down")
        .layer(0, 1e250, FOOT, "rock without end")
        .range("pressure.cut_in", 40, endless, PSI_UNIT, ">40")
        .amount("pressure.cut_out", 1e200, PSI_UNIT)
        .amount("tank.precharge", -14.7, PSI_UNIT)
        .amount("relief.setting", 0, PSI_UNIT)
        .amount("setback.septic_tank", 0, FOOT)
        .amount("setback.building", 1e100, FOOT)
        .range("setback.road", 10, endless, FOOT, ">10 ft")
        .range("setback.pond", -endless, endless, FOOT, "")
        .amount("water.yield", 0, GPM)
        .amount("site.occupants", 1e9, ONE)
        .record();
  }

  /** What would be markup, script or an address, in every entry. */
  public static WellRecord hostile() {
    Form form = new Form(HOSTILE);
    for (Entry entry : Catalogue.standard().entries()) {
      if (entry.index() > 0 && !entry.key().equals("layers")) {
        form.unreadable(entry.key(), HOSTILE, Note.NOT_A_NUMBER);
      }
    }
    return form.layer(0, 10, FOOT, HOSTILE)
        .layer(10, 20, FOOT, "${1+1} #{2} <#list 1..9 as x>")
        .text("driller.licence", HOSTILE)
        .text("installer.licence", HOSTILE)
        .amount("well.depth", 40, FOOT)
        .variance(HOSTILE, HOSTILE)
        .extra(HOSTILE, HOSTILE)
        .record();
  }

  /** Sets a mark on the page if any of it acts. */
  public static final String HOSTILE =
      "</script></style></title><script>window.acted=1</script><img src=x onerror='window.acted=1'>"
          + "\"'><svg onload=window.acted=1> javascript:window.acted=1 {0} ${7*7} &lt;\u202e\u0000";
}
