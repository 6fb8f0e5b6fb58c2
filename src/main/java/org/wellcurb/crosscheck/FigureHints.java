package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tests on what contractors write, and those of them that are worth a look. */
final class FigureHints {
  private FigureHints() {}

  /** All tests, on all fields. */
  static List<Copying.Tried> tried(SurveyFile survey) throws IOException {
    List<Copying.Tried> tried = new ArrayList<>();
    Copying copying = new Copying(survey);
    for (Field field : Field.values()) {
      tried.addAll(copying.tried(field, written(survey, field)));
    }
    return tried;
  }

  private static FloatBuffer written(SurveyFile survey, Field field) throws IOException {
    return survey.floats(SurveyRow.WRITTEN + 4 * field.ordinal());
  }

  /** Those that are great enough, and rare enough by chance; least q first. */
  static List<CrossResult.FigureHint> hints(
      SurveyFile survey, List<Copying.Tried> tried, double[] q, CrossResult.Rank[] ranks)
      throws IOException {
    Map<Copying.Tried, List<Seen>> marked = new HashMap<>();
    for (int i = 0; i < tried.size(); i++) {
      if (isHint(tried.get(i), q[i])) {
        marked.put(tried.get(i), new ArrayList<>());
      }
    }
    name(survey, marked);
    List<CrossResult.FigureHint> hints = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      Copying.Tried each = tried.get(i);
      if (isHint(each, q[i])) {
        hints.add(
            new CrossResult.FigureHint(
                survey.contractors().get(each.contractor()),
                survey.zones().get(each.zone()),
                each.field(),
                each.kind(),
                each.figure(),
                each.hits(),
                each.own(),
                Share.of(each.stands(), each.own()),
                each.othersShare(),
                each.p(),
                q[i],
                ranks[i],
                marked.getOrDefault(each, List.of())));
      }
    }
    hints.sort(
        Comparator.comparingDouble(CrossResult.FigureHint::q)
            .thenComparingDouble(CrossResult.FigureHint::p)
            .thenComparing(CrossResult.FigureHint::licence)
            .thenComparing(CrossResult.FigureHint::zone)
            .thenComparing(CrossResult.FigureHint::field)
            .thenComparing(CrossResult.FigureHint::kind));
    return hints;
  }

  private static boolean isHint(Copying.Tried tried, double q) {
    return tried.isMarked() && q <= CrossResult.ACCEPTED;
  }

  /** Names some of the records that each hint is about, in one reading for each field. */
  private static void name(SurveyFile survey, Map<Copying.Tried, List<Seen>> marked)
      throws IOException {
    if (marked.isEmpty()) {
      return;
    }
    IntBuffer contractor = survey.ints(SurveyRow.CONTRACTOR);
    IntBuffer zone = survey.ints(SurveyRow.ZONE);
    for (Field field : Field.values()) {
      Map<Long, List<Copying.Tried>> byGroup = new HashMap<>();
      for (Copying.Tried each : marked.keySet()) {
        if (each.field() == field) {
          byGroup
              .computeIfAbsent(key(each.contractor(), each.zone()), key -> new ArrayList<>())
              .add(each);
        }
      }
      FloatBuffer written = byGroup.isEmpty() ? FloatBuffer.allocate(0) : written(survey, field);
      for (int i = 0; i < written.capacity(); i++) {
        long group = key(contractor.get(i), zone.get(i));
        for (Copying.Tried each : byGroup.getOrDefault(group, List.of())) {
          List<Seen> seen = marked.getOrDefault(each, List.of());
          if (seen.size() < CrossCheck.NAMED && Copying.isAbout(each, written.get(i))) {
            seen.add(survey.seen(i));
          }
        }
      }
    }
  }

  private static long key(int contractor, int zone) {
    return ((long) zone << 32) | contractor;
  }
}
