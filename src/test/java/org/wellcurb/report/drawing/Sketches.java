package org.wellcurb.report.drawing;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.PackScope;

/** Drawings of forms that tests fill. */
final class Sketches {
  /** Words of a label that stands for many, which the words beside it name one by one. */
  static final Set<String> TOPMOST = Set.of("the", "topmost", "le", "plus", "haut");

  private static final Pack PACK = load();

  private Sketches() {}

  private static Pack load() {
    try {
      return PackLoader.load("common-practice");
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static Sketch of(
      WellRecord record,
      Language language,
      UnitsShown units,
      List<Mark> marks,
      Map<String, Limit> limits) {
    Words words = Words.in(language);
    return new Sketch(
        record,
        new PackScope(PACK.tables(), PACK.figures()),
        words,
        new Amounts(words, units),
        marks,
        limits);
  }

  static Sketch of(WellRecord record) {
    return of(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), Map.of());
  }

  static Drawing drawn(Sketch sketch, String id) {
    return sketch.drawings().stream()
        .filter(drawing -> drawing.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  static Drawing section(WellRecord record) {
    return drawn(of(record), WellSection.ID);
  }

  static long count(Drawing drawing, String kind) {
    return drawing.svg().split("class=\"" + kind + "\"", -1).length - 1;
  }

  static String legend(Drawing drawing) {
    return String.join("\n", drawing.legend().stream().map(Sign::text).toList());
  }
}
