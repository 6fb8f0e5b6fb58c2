package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;

/** The drop pipe with what hangs on it: pump, motor, check valves, torque arresters. */
final class DropPipe {
  private static final double PIPE = 4;
  private static final String VALVE_SIGN = "M7 4h16l-16 10h16z";

  /** How far over the intake the valve of the pump and the first arrester stand on paper. */
  private static final double VALVE = 23;

  private static final double ARRESTER = 34;

  private final Sketch sketch;
  private final double intake;
  private final double pitless;
  private final double start;
  private final double buried;
  private final List<PipeFittings> fittings;

  DropPipe(Sketch sketch, Depths depths) {
    this.sketch = sketch;
    intake = depths.of("pump.intake_depth");
    pitless = depths.of("pitless.depth");
    start = Double.isNaN(pitless) ? 0 : pitless;
    buried = depths.of("service_line.burial_depth");
    fittings = PipeFittings.of(sketch, start, isPumpBelow(sketch) ? intake : Double.NaN);
  }

  /** Of a pump above the ground only the pipe hangs in the well. */
  static boolean isPumpBelow(Sketch sketch) {
    return !sketch.is("pump.type", "jet") && !sketch.is("pump.type", "hand");
  }

  private boolean isPumpBelow() {
    return isPumpBelow(sketch);
  }

  /**
   * Draws them.
   *
   * @param bottom depth at which the well ends (m), which no motor is drawn through
   * @param edge where the hole begins
   */
  void draw(Svg svg, Ruler ruler, double bottom, double left, double centre, double edge) {
    if (pitless > 0) {
      svg.line("line", left, ruler.y(pitless), centre - PIPE, ruler.y(pitless));
    }
    if (buried > 0 && buried != pitless) {
      svg.line("line", left, ruler.y(buried), edge, ruler.y(buried));
    }
    if (!(intake > start)) {
      return;
    }
    double y = ruler.y(intake);
    double foot = isPumpBelow() ? Math.max(ruler.y(start), y - 16) : y;
    svg.box("pipe", centre - PIPE, ruler.y(start), foot, 2 * PIPE);
    for (PipeFittings each : fittings) {
      boolean isValve = each.kind().equals("valve");
      if (each.isAtPump()) {
        fitting(
            svg, isValve, centre, Math.max(ruler.y(start) + 6, y - (isValve ? VALVE : ARRESTER)));
      }
      each.above().forEach(depth -> fitting(svg, isValve, centre, ruler.y(depth)));
    }
    if (isPumpBelow()) {
      svg.box("pump", centre - 9, y - 18, y, 18);
    }
    svg.line("intake", centre - 13, y, centre + 13, y);
    if (sketch.is("pump.type", "submersible")) {
      double floor = ruler.y(bottom) - 2;
      svg.box("motor", centre - 7, y, floor > y + 3 ? Math.min(y + 16, floor) : y + 16, 14);
    }
  }

  private static void fitting(Svg svg, boolean isValve, double centre, double y) {
    if (isValve) {
      svg.path("valve", "M" + Svg.number(centre - 8) + " " + Svg.number(y - 5) + "h16l-16 10h16z");
    } else {
      svg.path(
          "arrester", "M" + Svg.number(centre - 20) + " " + Svg.number(y + 4) + "l8 -8h24l8 8");
    }
  }

  /** Labels of what hangs on the pipe. */
  List<Tag> tags() {
    return fittings.stream().flatMap(each -> each.tags(intake).stream()).toList();
  }

  List<String> words() {
    List<String> words = new ArrayList<>(remarks());
    fittings.forEach(each -> words.addAll(each.words()));
    return words;
  }

  private static void pump(Svg svg) {
    double middle = Legend.WIDTH / 2.0;
    svg.box("pump", middle - 5, 1, 9, 10);
    svg.line("intake", middle - 9, 9, middle + 9, 9);
    svg.box("motor", middle - 4, 9, Legend.HEIGHT - 1, 8);
  }

  void legend(Legend legend) {
    legend
        .sign("pump", sketch.say("section.sign.pump"), DropPipe::pump)
        .sign("valve", sketch.say("section.sign.valve"), svg -> svg.path("valve", VALVE_SIGN))
        .sign(
            "arrester",
            sketch.say("section.sign.arrester"),
            svg -> svg.path("arrester", "M1 13l8 -8h12l8 8"));
    if (fittings.stream().anyMatch(each -> !each.above().isEmpty())) {
      legend.line(sketch.say("section.fitting.reckoned"));
    }
    remarks().forEach(legend::line);
    fittings.forEach(each -> legend.lines(each.notes()));
  }

  /** What is not where one would look for it. */
  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (!isPumpBelow()) {
      remarks.add(sketch.say("section.pump.above", sketch.read("pump.type")));
    }
    if (buried > 0 && !(pitless > 0)) {
      remarks.add(sketch.say("section.line.end"));
    }
    return remarks;
  }
}
