package org.wellcurb.rulepack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.WorkingCatalogue;

/** Reads the figures that a pack sets. */
final class FigureReader {
  private final Problems problems;
  private final Shapes shapes;
  private final WorkingCatalogue workings;

  FigureReader(Problems problems, Shapes shapes, WorkingCatalogue workings) {
    this.problems = problems;
    this.shapes = shapes;
    this.workings = workings;
  }

  /** The figures by name, in SI. */
  Map<String, Double> read(@Nullable Json json) {
    Map<String, Double> figures = new LinkedHashMap<>();
    if (json != null && !(json instanceof Json.Obj)) {
      problems.stumble(json);
    }
    if (json instanceof Json.Obj object) {
      for (Json.Member member : object.members()) {
        figure(member, figures);
      }
    }
    return figures;
  }

  private void figure(Json.Member member, Map<String, Double> figures) {
    String name = member.key().value();
    Figure figure = workings.figure(name);
    String text = shapes.amount(member.value());
    if (figure == null) {
      problems.at(
          member.key(),
          "no working reads a figure " + name,
          Mends.nearest(name, names(), "take it away"));
      return;
    }
    if (text == null) {
      return;
    }
    try {
      figures.put(name, AmountText.single(text, 0, text.length(), figure.unit().dimension(), null));
    } catch (FormulaException e) {
      problems.within(member.value(), e);
    }
  }

  private List<String> names() {
    return workings.figures().stream().map(Figure::name).toList();
  }
}
