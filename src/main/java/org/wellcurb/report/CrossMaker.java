package org.wellcurb.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.wellcurb.crosscheck.Copying;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Duplicates;
import org.wellcurb.crosscheck.Field;
import org.wellcurb.crosscheck.RuleFloors;
import org.wellcurb.crosscheck.Seen;
import org.wellcurb.crosscheck.Share;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Numerals;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/** Puts what only the whole batch shows into modest words. */
final class CrossMaker {
  private static final double LEAST_Q = 0.0001;

  private final CrossView view;
  private final CrossResult result;
  private final PageStyle style;
  private final Words words;
  private final Amounts amounts;
  private final boolean isMetric;

  CrossMaker(CrossView view, PageStyle style) {
    this.view = view;
    this.style = style;
    result = view.result();
    words = Words.in(style.language());
    amounts = new Amounts(words, style.units());
    isMetric = style.units() == UnitsShown.METRIC;
  }

  CrossPage page() {
    List<CrossPage.Part> parts = new ArrayList<>();
    // What an auditor acts on first comes first; long lists of forms come last.
    slips(parts);
    figures(parts);
    rules(parts);
    neighbours(parts);
    nearLimits(parts);
    sameNumbers(parts);
    nearCopies(parts);
    nothing(parts);
    List<CrossPage.Table> tables = new ArrayList<>();
    table(
        tables,
        "cross-contractors",
        "cross.rates.contractors",
        "col.licence",
        result.contractors());
    table(tables, "cross-zones", "cross.rates.zones", "cross.zone", result.zones());
    table(tables, "cross-years", "cross.rates.years", "cross.year", result.years());
    return new CrossPage(parts, tables);
  }

  private void add(
      List<CrossPage.Part> parts, String title, String lead, List<String> sentences, long total) {
    add(parts, title, words.say(lead), "", sentences, total, List.of());
  }

  /**
   * Adds a part.
   *
   * @param total how many there are of what the sentences say one each
   * @param remarks what else is to be said of the check; none of these is counted
   */
  private void add(
      List<CrossPage.Part> parts,
      String title,
      String lead,
      String more,
      List<String> sentences,
      long total,
      List<String> remarks) {
    List<String> all = new ArrayList<>(sentences);
    all.addAll(remarks);
    if (!all.isEmpty()) {
      String cut =
          sentences.size() < total
              ? words.say("cut", sentences.size(), total, Outputs.CROSSCHECK_JSON)
              : "";
      parts.add(new CrossPage.Part(words.say(title), lead, more, all, cut));
    }
  }

  private void sameNumbers(List<CrossPage.Part> parts) {
    Duplicates.Found found = result.duplicates();
    List<String> sentences = new ArrayList<>();
    for (Duplicates.SameNumber same : first(found.sameNumbers())) {
      String id = view.id(same.records().get(0));
      String places = places(same.records(), same.rows());
      sentences.add(
          same.different().isEmpty()
              ? words.say("cross.same.equal", id, places)
              : words.say("cross.same.line", id, places, entries(same.different())));
    }
    add(parts, "cross.same", "cross.same.lead", sentences, found.sameNumberTotal());
  }

  private void nearCopies(List<CrossPage.Part> parts) {
    Duplicates.Found found = result.duplicates();
    List<String> sentences = new ArrayList<>();
    for (Duplicates.NearCopy near : first(found.nearCopies())) {
      sentences.add(nearCopy(near));
    }
    List<String> remarks =
        found.isCut() ? List.of(words.say("cross.near.cut", found.notCompared())) : List.of();
    add(
        parts,
        "cross.near",
        words.say("cross.near.lead"),
        words.say("cross.near.more"),
        sentences,
        found.nearCopyTotal(),
        remarks);
  }

  private String nearCopy(Duplicates.NearCopy near) {
    boolean isPair = near.size() == 2;
    List<String> names = new ArrayList<>();
    near.records().stream().limit(Cap.CROSS_NAMED.most()).map(view::id).forEach(names::add);
    more(names, near.size() - names.size());
    Object first = isPair ? view.id(near.records().get(0)) : near.size();
    String others = isPair ? view.id(near.records().get(1)) : String.join(", ", names);
    String equal = isPair ? "cross.near.equal" : "cross.near.equal.many";
    String line = isPair ? "cross.near.line" : "cross.near.line.many";
    return near.different().isEmpty()
        ? words.say(equal, first, others, near.equal())
        : words.say(line, first, others, near.equal(), entries(near.different()));
  }

  private void figures(List<CrossPage.Part> parts) {
    List<String> sentences = new ArrayList<>();
    for (CrossResult.FigureHint hint : first(result.figures())) {
      String where =
          hint.zone().isEmpty()
              ? words.say("cross.figures.nowhere")
              : words.say("cross.figures.where", hint.zone());
      boolean isRow = hint.kind() == Copying.Kind.RUN;
      String what =
          words.say(
              figure(hint.kind()),
              number(hint.figure()),
              isRow ? hint.hits() : share(hint.share()),
              isRow ? number(Math.rint(hint.likelyRow())) : percent(hint.othersShare()),
              hint.share().hits(),
              hint.own());
      sentences.add(
          words.say(
              "cross.figures.line",
              hint.licence(),
              where,
              words.entry(hint.field().key()),
              what,
              q(hint.q()),
              names(hint.seen())));
    }
    add(parts, "cross.figures", "cross.figures.lead", sentences, result.figures().size());
  }

  private static String figure(Copying.Kind kind) {
    return switch (kind) {
      case REPEATED -> "cross.figures.repeated";
      case ROUND -> "cross.figures.round";
      case RUN -> "cross.figures.run";
      case DIGIT -> "cross.figures.digit";
    };
  }

  private void rules(List<CrossPage.Part> parts) {
    List<String> sentences = new ArrayList<>();
    for (CrossResult.RuleHint hint : first(result.rules())) {
      String group =
          switch (hint.by()) {
            case CONTRACTOR -> "cross.rules.contractor";
            case ZONE -> "cross.rules.zone";
            case YEAR -> "cross.rules.year";
          };
      sentences.add(
          words.say(
              hint.by() == CrossResult.By.CONTRACTOR
                  ? "cross.rules.line.where"
                  : "cross.rules.line",
              words.say(group, hint.group()),
              title(hint.title()),
              share(hint.share()),
              percent(hint.othersShare()),
              q(hint.q())));
    }
    List<String> remarks = new ArrayList<>();
    if (result.unnamed() > 0) {
      int names = Cap.NAMES_COMPARED.most();
      remarks.add(words.say("cross.rules.unnamed", result.unnamed(), names));
    }
    if (result.groupsLeftOut() > 0) {
      remarks.add(words.say("cross.rules.cut", result.groupsLeftOut()));
    }
    if (result.notAmongOthers() > 0) {
      remarks.add(words.say("cross.rules.off", result.notAmongOthers()));
    }
    add(parts, "cross.rules", rulesLead(), "", sentences, result.rulesTotal(), remarks);
  }

  private String rulesLead() {
    return words.say(
        "cross.rules.lead",
        RuleFloors.OF_GROUP,
        RuleFloors.OF_OTHERS,
        RuleFloors.SHORT,
        number(RuleFloors.RATIO),
        percent(RuleFloors.MORE),
        number(RuleFloors.SURE_RATIO),
        RuleFloors.least(20, RuleFloors.MORE),
        RuleFloors.least(100, RuleFloors.MORE),
        RuleFloors.least(500, RuleFloors.MORE),
        RuleFloors.IN_STRATUM);
  }

  /** What was looked for and did not stand out: silence says nothing of whether anyone looked. */
  private void nothing(List<CrossPage.Part> parts) {
    List<String> sentences = new ArrayList<>();
    CrossResult.Tests tried = result.tried();
    if (result.slips().isEmpty()) {
      tested(sentences, "cross.slips", tried.units());
    }
    if (result.figures().isEmpty()) {
      tested(sentences, "cross.figures", tried.figures());
    }
    if (result.rulesTotal() == 0) {
      tested(sentences, "cross.rules", tried.rules());
      if (tried.rules() > 0) {
        sentences.add(rulesLead());
      }
    }
    if (result.unlikeTotal() == 0) {
      sentences.add(
          result.comparedWells() == 0
              ? words.say(unlikeUntested(), words.say("cross.unlike"))
              : words.say("cross.none.wells", words.say("cross.unlike"), result.comparedWells()));
      sentences.addAll(
          result.comparedWells() == 0
              ? looked(CrossResult.How.TELLS_TOO_LITTLE)
              : looked(CrossResult.How.TELLS_TOO_LITTLE, CrossResult.How.NONE_NEAR));
    }
    if (result.duplicates().sameNumberTotal() == 0) {
      sentences.add(words.say("cross.none.records", words.say("cross.same"), result.records()));
    }
    if (result.duplicates().nearCopyTotal() == 0 && !result.duplicates().isCut()) {
      sentences.add(words.say("cross.none.records", words.say("cross.near"), result.records()));
    }
    add(parts, "cross.none.title", "cross.none.lead", sentences, sentences.size());
  }

  /** Where wells had neighbours, it is not for want of records that none was compared. */
  private String unlikeUntested() {
    return looked(CrossResult.How.TELLS_TOO_LITTLE).isEmpty()
        ? "cross.none.untested"
        : "cross.none.wells.untold";
  }

  private void tested(List<String> sentences, String what, long tests) {
    sentences.add(
        tests == 0
            ? words.say("cross.none.untested", words.say(what))
            : words.count("cross.none.tests", tests, words.say(what)));
  }

  private void nearLimits(List<CrossPage.Part> parts) {
    List<RuleCount> near = RuleCount.near(view.rules());
    List<String> sentences = new ArrayList<>();
    for (RuleCount rule : first(near)) {
      sentences.add(
          words.say(
              "cross.hair.line",
              title(rule.title()),
              rule.near(),
              rule.share().hits(),
              rule.pack()));
    }
    add(parts, "cross.hair", "cross.hair.lead", sentences, near.size());
  }

  private void slips(List<CrossPage.Part> parts) {
    List<String> sentences = new ArrayList<>();
    for (CrossResult.SlipHint hint : first(result.slips())) {
      sentences.add(
          words.say(
              hint.ratio() < 1 ? "cross.slips.metres" : "cross.slips.feet",
              hint.group(),
              share(hint.share()),
              number(hint.ratio()),
              q(hint.q()),
              names(hint.seen())));
    }
    add(parts, "cross.slips", "cross.slips.lead", sentences, result.slips().size());
  }

  private void neighbours(List<CrossPage.Part> parts) {
    List<String> sentences = new ArrayList<>();
    for (CrossResult.NeighbourHint hint : first(result.unlike())) {
      sentences.add(
          words.say(
              "cross.unlike.line",
              view.id(hint.seen()),
              words.say(measured(hint.field())),
              measured(hint.field(), hint.value()),
              measured(hint.field(), hint.median()),
              hint.neighbours(),
              number(hint.score()),
              spread(hint)));
    }
    if (!sentences.isEmpty()) {
      String lead = words.say("cross.unlike.lead");
      long total = result.unlikeTotal();
      add(parts, "cross.unlike", lead, "", sentences, total, looked(CrossResult.How.values()));
    }
  }

  /** Of each field that was looked at so, that it was, or why not. */
  private List<String> looked(CrossResult.How... hows) {
    List<String> looked = new ArrayList<>();
    for (CrossResult.Looked each : result.looked()) {
      if (List.of(hows).contains(each.how())) {
        String key =
            switch (each.how()) {
              case COMPARED -> "cross.unlike.compared";
              case NONE_NEAR -> "cross.unlike.none_near";
              case TELLS_TOO_LITTLE -> "cross.unlike.too_little";
            };
        looked.add(words.count(key, each.wells(), words.say(measured(each.field()))));
      }
    }
    return looked;
  }

  /** A spread in the unit of the figure; of a yield the factor that it stands for. */
  private String spread(CrossResult.NeighbourHint hint) {
    return hint.field() == Field.YIELD
        ? words.say("cross.unlike.factor", number(Math.pow(10, hint.believed())))
        : rounded(hint.believed());
  }

  /** A length to two figures. */
  private String rounded(double metres) {
    Unit unit = isMetric ? Units.METRE : Units.FOOT;
    BigDecimal figure = BigDecimal.valueOf(metres / unit.factor());
    return amounts.amount(figure.round(new MathContext(2)).doubleValue(), unit);
  }

  private static String measured(Field field) {
    return switch (field) {
      case DEPTH -> "cross.unlike.depth";
      case STATIC_LEVEL -> "cross.unlike.static_level";
      case YIELD -> "cross.unlike.yield";
    };
  }

  private String measured(Field field, double value) {
    if (field == Field.YIELD) {
      Unit unit = isMetric ? Units.LITRE_PER_MINUTE : Units.GPM;
      return amounts.amount(Math.pow(10, value) / unit.factor(), unit);
    }
    Unit unit = isMetric ? Units.METRE : Units.FOOT;
    return amounts.amount(value / unit.factor(), unit);
  }

  private void table(
      List<CrossPage.Table> tables,
      String id,
      String title,
      String column,
      List<CrossResult.GroupRate> rates) {
    if (rates.size() < 2) {
      return;
    }
    List<CrossPage.Row> rows = new ArrayList<>();
    for (CrossResult.GroupRate rate : rates) {
      if (rows.size() == Cap.CONTRACTORS_ON_PAGE.most()) {
        break;
      }
      rows.add(
          new CrossPage.Row(
              rate.name().isEmpty() ? words.say("cross.none") : rate.name(),
              RateBar.of(rate.share()),
              share(rate.share()),
              said(rate)));
    }
    tables.add(new CrossPage.Table(id, words.say(title), words.say(column), rows));
  }

  private String said(CrossResult.GroupRate rate) {
    if (rate.isSmall()) {
      return words.say("cross.rates.small");
    }
    String expected = percent(rate.expected());
    if (rate.q() > CrossResult.ACCEPTED) {
      return words.say("cross.rates.alike", expected);
    }
    return words.say(
        rate.share().share() > rate.expected() ? "cross.rates.more" : "cross.rates.less",
        expected,
        q(rate.q()));
  }

  /** A title in the words of the page; in quotes where the pack has them in its own only. */
  private String title(String title) {
    String own = style.own(title);
    boolean isForeign = words.language() != Language.EN && own.equals(title);
    return isForeign ? words.say("quoted", title) : own;
  }

  private static <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(Cap.CROSS_ON_PAGE.most(), all.size()));
  }

  private String places(List<Seen> records, long rows) {
    List<String> places = new ArrayList<>();
    for (Seen seen : records.subList(0, Math.min(Cap.CROSS_NAMED.most(), records.size()))) {
      places.add(words.say("place", seen.file(), seen.row()));
    }
    more(places, rows - places.size());
    return String.join("; ", places);
  }

  private String names(List<Seen> records) {
    return String.join(", ", records.stream().map(view::id).toList());
  }

  private String entries(List<String> keys) {
    List<String> names = new ArrayList<>();
    keys.stream().limit(Cap.CROSS_NAMED.most()).map(this::entry).forEach(names::add);
    more(names, keys.size() - names.size());
    return String.join(", ", names);
  }

  private String entry(String key) {
    return key.equals("variances") ? words.say("cross.beside.variances") : words.entry(key);
  }

  private void more(List<String> names, long more) {
    if (more > 0) {
      names.add(words.say("cross.more", more));
    }
  }

  private String share(Share share) {
    return Rates.words(share, words);
  }

  private String percent(double share) {
    return Rates.percent(share, words);
  }

  /** The rate of false discoveries; what is next to nothing is said to be less than little. */
  private String q(double q) {
    return q < LEAST_Q
        ? "q < " + Numerals.of(LEAST_Q, 2, words.language())
        : "q = " + Numerals.of(q, 2, words.language());
  }

  private String number(double number) {
    return Numerals.of(number, 2, words.language());
  }
}
