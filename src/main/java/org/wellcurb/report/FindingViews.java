package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Letters;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/** The findings of a record as its sheet shows them: in the order of {@link Harm#gravestFirst}. */
final class FindingViews {
  private final RecordResult result;
  private final Words words;
  private final FindingSentence sentence;
  private final RuleWords ruleWords;
  private final Function<Finding, @Nullable Settlement> settled;

  FindingViews(
      RecordResult result, PageStyle style, Function<Finding, @Nullable Settlement> settled) {
    this.settled = settled;
    this.result = result;
    words = Words.in(style.language());
    sentence = new FindingSentence(style);
    ruleWords = new RuleWords(words);
  }

  List<FindingView> all() {
    List<FindingView> views = new ArrayList<>();
    for (Finding finding : Harm.gravestFirst(result.findings())) {
      views.add(view(finding, Letters.at(views.size())));
    }
    return views;
  }

  private FindingView view(Finding finding, String letter) {
    Explanation why = why(finding);
    return new FindingView(
        letter,
        "finding-" + letter.toLowerCase(Locale.ROOT),
        finding.rule().kind().label(),
        heading(finding),
        finding.rule().id(),
        finding.deciding().entry(),
        finding.rule().required(),
        whose(finding),
        ruleWords.title(finding.rule()),
        sentence.of(finding),
        near(finding.deciding()),
        why,
        ruleWords.because(finding.rule()),
        ruleWords.remedy(finding.rule()),
        finding.rule().atOnce(),
        SourceLine.of(finding.source(), words),
        finding.possibleReading(),
        settled(finding));
  }

  /**
   * What a text recommends must not be called common practice: who answers asks where it stands.
   */
  private static String heading(Finding finding) {
    boolean isOfText =
        finding.rule().kind() == FindingKind.ADVISORY
            && finding.source().basis() != Source.Basis.COMMON_PRACTICE;
    return isOfText ? FindingView.OF_TEXT : "kind." + finding.rule().kind().label();
  }

  private String whose(Finding finding) {
    WellRecord record = result.record();
    String licence = Whose.licence(record, finding);
    String installer = Whose.installer(record);
    boolean isInstallers = Whose.isInstallers(record, finding);
    if (licence.isEmpty()) {
      return words.say(isInstallers ? "whose.installer" : "whose.driller");
    }
    // Whoever of the two is named answers for the other, too.
    boolean isTheirs = isInstallers ? !installer.isEmpty() : Whose.driller(record).isEmpty();
    return words.say(isTheirs ? "whose.installer.licence" : "whose.driller.licence", licence);
  }

  private String settled(Finding finding) {
    @Nullable Settlement settlement = settled.apply(finding);
    if (settlement == null) {
      return "";
    }
    String told =
        words.say(
            "finding.settled.as",
            settlement.decision(),
            settlement.by(),
            settlement.date(),
            settlement.note());
    return settlement.isOfAnother(finding)
        ? told.strip() + " " + words.say("finding.settled.otherwise", settlement.written())
        : told;
  }

  private Explanation why(Finding finding) {
    for (RuleResult each : result.results()) {
      if (each.rule().id().equals(finding.rule().id())) {
        return each.explanation();
      }
    }
    return new Explanation(
        Outcome.FALLS_SHORT,
        "",
        "",
        "",
        finding.deciding(),
        List.of(),
        List.of(),
        List.of(),
        finding.text(),
        false);
  }

  /** Said where half of the last written place is as much as the margin. */
  private String near(Deciding deciding) {
    Entry entry = result.record().catalogue().find(deciding.entry());
    @Nullable Unit unit = deciding.unit();
    if (entry == null
        || unit == null
        || unit.isReversed()
        || !deciding.subject().isEmpty()
        || Double.isNaN(deciding.margin())) {
      return "";
    }
    double half = result.record().halfPlace(entry.index());
    double margin = Math.abs(deciding.margin()) * unit.factor();
    return half > 0 && margin <= half * (1 + 1e-9) ? words.say("finding.near") : "";
  }
}
