package org.wellcurb.workings;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** All workings and figures, by name. To add a working, add it to the list of its subject. */
public final class WorkingCatalogue {
  private static final WorkingCatalogue STANDARD =
      new WorkingCatalogue(
          List.of(
              WellHydraulics.workings(),
              FlowingWell.workings(),
              Recovery.workings(),
              PumpSetting.workings(),
              CasingSize.workings(),
              WellVolume.workings(),
              DrillersLog.workings(),
              Annulus.workings(),
              Grout.workings(),
              PumpClearance.workings(),
              PipeFriction.workings(),
              PumpHead.workings(),
              ShutOff.workings(),
              PipePressure.workings(),
              PipeRating.workings(),
              PressureTank.workings(),
              Supply.workings(),
              Cable.workings(),
              MotorCurrent.workings(),
              Insulation.workings(),
              GroundCover.workings(),
              Fittings.workings(),
              SuctionLift.workings(),
              Position.workings(),
              Chlorination.workings(),
              Days.workings()),
          List.of(
              Grout.figures(),
              PipeFriction.figures(),
              PumpHead.figures(),
              ShutOff.figures(),
              PipeRating.figures(),
              Atmosphere.figures(),
              Supply.figures(),
              Cable.figures(),
              Insulation.figures(),
              Fittings.figures(),
              SuctionLift.figures(),
              Position.figures(),
              Chlorination.figures()));

  private final Map<String, Working> workings = new LinkedHashMap<>();
  private final Map<String, Figure> figures = new LinkedHashMap<>();

  private WorkingCatalogue(List<List<Working>> subjects, List<List<Figure>> figureSubjects) {
    for (List<Figure> subject : figureSubjects) {
      for (Figure figure : subject) {
        if (figures.put(figure.name(), figure) != null) {
          throw new IllegalStateException("two figures are called " + figure.name());
        }
      }
    }
    for (List<Working> subject : subjects) {
      for (Working working : subject) {
        if (workings.put(working.name(), working) != null) {
          throw new IllegalStateException("two workings are called " + working.name());
        }
        for (String name : working.figures()) {
          if (!figures.containsKey(name)) {
            throw new IllegalStateException(
                working.name() + " reads a figure that is not: " + name);
          }
        }
      }
    }
  }

  /** The catalogue that ships. */
  public static WorkingCatalogue standard() {
    return STANDARD;
  }

  /** The working with this name; null if there is none. */
  public @Nullable Working find(String name) {
    return workings.get(name);
  }

  public Collection<Working> workings() {
    return workings.values();
  }

  /** The figure with this name; null if there is none. */
  public @Nullable Figure figure(String name) {
    return figures.get(name);
  }

  public Collection<Figure> figures() {
    return figures.values();
  }
}
