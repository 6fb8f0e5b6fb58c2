package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.Told;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.SetAside;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.NameFold;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Cap;
import org.wellcurb.report.FindingsCsv;
import org.wellcurb.report.FindingsGeoJson;
import org.wellcurb.report.KindCounts;
import org.wellcurb.report.MapCells;
import org.wellcurb.report.OutcomesCsv;
import org.wellcurb.report.Place;
import org.wellcurb.report.RecordsCsv;
import org.wellcurb.report.SetAsideCsv;
import org.wellcurb.report.SetAsideLine;
import org.wellcurb.report.Settlement;
import org.wellcurb.report.Urgent;
import org.wellcurb.report.Whose;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.NamedElsewhere;
import org.wellcurb.screening.Screener;
import org.wellcurb.screening.Tally;
import org.wellcurb.screening.UnfitWater;

/** Screens parts, on one thread. Its tallies are merged when all parts are done. */
final class PartWork implements Pipeline.Work<Part, PartResult>, RecordSink {
  private static final int FALLS_SHORT = Outcome.FALLS_SHORT.ordinal();
  private static final int MEETS = Outcome.MEETS.ordinal();
  private static final int ZONE = Catalogue.standard().index("site.zone");
  private static final int CANNOT_TELL = Outcome.CANNOT_TELL.ordinal();

  private final Plan plan;
  private final Stop stop;
  private final Answering answering;
  private final ChunkReader reader = new ChunkReader(Catalogue.standard());
  private final List<Screener> screeners = new ArrayList<>();

  private final List<Tally> tallies = new ArrayList<>();
  private final List<byte[]> kindOfRule = new ArrayList<>();

  /** What each rule said of the record at hand, by pack. */
  private final List<byte[]> told = new ArrayList<>();

  /** Each pack's rules are objects of its own, so one map holds the rules of all. */
  private final IdentityHashMap<Rule, Integer> placeOfRule = new IdentityHashMap<>();

  /** Hashes of the values of the record at hand, by entry. */
  private final int[] hashes = new int[Catalogue.standard().size()];

  /** Records that wait to be judged together. */
  private final Block block;

  private final int[] outcomes = new int[Outcome.values().length];
  private final int[] kinds = new int[FindingKind.values().length];

  /** By pack: where its rules begin, were those of all packs in one row. */
  private final int[] firstRule;

  private final Speakers speakers;
  private final Listing listing;
  private final RepeatedTexts texts = new RepeatedTexts();
  private PartResult result;
  private @Nullable Part part;
  private String betweenRows = "";
  private int place;

  PartWork(Plan plan, Stop stop) {
    this.plan = plan;
    this.stop = stop;
    this.answering = new Answering(plan.answers(), plan.repeated(), plan.request().asOf());
    this.speakers = new Speakers(plan);
    this.listing = new Listing(plan, speakers);
    this.result = new PartResult(0, 0, 0, plan.maps());
    this.firstRule = RuleGrid.starts(plan.packs());
    this.block = new Block(plan.packs(), plan.request().asOf());
    for (Pack pack : plan.packs()) {
      screeners.add(new Screener(pack, plan.request().asOf()));
      tallies.add(new Tally(pack));
      byte[] kindOf = new byte[pack.rules().size()];
      for (int i = 0; i < kindOf.length; i++) {
        kindOf[i] = (byte) pack.rules().get(i).kind().ordinal();
        placeOfRule.put(pack.rules().get(i), i);
      }
      kindOfRule.add(kindOf);
      told.add(new byte[kindOf.length]);
    }
  }

  /** What this thread has counted, one tally for each pack. */
  List<Tally> tallies() {
    return tallies;
  }

  @Override
  public void on(Part work, PartResult into) {
    part = work;
    result = into;
    place = 0;
    into.part = work;
    betweenRows = work.source().rawFrame().between();
    if (work.chunk() != null) {
      into.reading = reader.read(work.chunk(), this);
      judge();
    } else {
      SetAside whole = work.source().unusable();
      if (whole != null) {
        aside(whole);
      }
    }
  }

  @Override
  public void record(WellRecord record, RawRow raw) {
    stop.checkWithinPart();
    int pack = plan.choice().of(record);
    if (pack < 0) {
      setAside(
          new SetAside(
              record.file(),
              record.row(),
              PackChoice.ENTRY,
              plan.choice().why(record),
              raw.bytes()));
      return;
    }
    block.add(answering.amended(record, screeners.get(pack)), pack);
    if (block.isFull()) {
      judge();
    }
  }

  /** Judges the records that wait, side by side, and takes what comes of them in input order. */
  private void judge() {
    block.judge();
    for (int i = 0; i < block.size(); i++) {
      int pack = block.pack(i);
      WellRecord record = block.record(i);
      judge(record, block.mark(i), pack, block.outcomes(i, screeners.get(pack)));
    }
    block.clear();
  }

  private void judge(WellRecord record, long mark, int pack, byte[] judged) {
    tallies.get(pack).add(judged);
    count(judged, kindOfRule.get(pack));
    if (!record.variances().isEmpty()) {
      VarianceLines.put(result, record, screeners.get(pack));
    }
    result.screened++;
    String elsewhere = NamedElsewhere.of(record, plan.packs().get(pack));
    if (!elsewhere.isEmpty()) {
      result.elsewhere.add(elsewhere);
    }
    String packId = plan.packs().get(pack).id();
    RecordsCsv.put(result.records, record, packId, outcomes, kinds);
    String driller = texts.of(record, Whose.DRILLER);
    if (plan.request().looks().crosscheck()) {
      RecordMark.hashes(record, hashes);
      survey(record, pack, judged, driller);
    }
    String installer = texts.of(record, Whose.INSTALLER);
    result.licences.record(driller);
    if (!installer.isEmpty() && !NameFold.same(installer, driller)) {
      result.licences.record(installer);
    }
    int level = AskSample.level(mark);
    if (level >= plan.bars().asksFrom()) {
      countAsks(pack, judged, result.asks.at(level));
    }
    if (plan.request().output().outcomes()) {
      OutcomesCsv.put(result.outcomeLines, record, screeners.get(pack), judged);
    }
    List<Finding> findings =
        outcomes[FALLS_SHORT] == 0 ? List.of() : screeners.get(pack).findings();
    mark(record, mark, driller, installer, pack, judged, findings);
    List<Finding> open = findings;
    @Nullable Place where = Place.of(record, plan.request().output().positionAccuracy());
    if (!findings.isEmpty()) {
      write(record, packId, findings, where);
      countNear(pack, findings);
      open = open(findings);
      found(record, pack, open, water(record, findings, open), driller, installer);
    }
    place(where, pack, open);
    boolean isUnfit = isUnfit(record, findings, open);
    if (isUnfit && open.isEmpty()) {
      result.unfitOnly++;
    }
    keep(record, pack, open, !findings.isEmpty(), isUnfit, driller, installer, where);
    place++;
  }

  /**
   * Keeps what a later run needs to lay its findings beside these, and lays these beside earlier.
   */
  private void mark(
      WellRecord record,
      long mark,
      String driller,
      String installer,
      int pack,
      byte[] judged,
      List<Finding> findings) {
    MarksLine.put(result.marks, mark, driller, installer);
    for (Finding finding : findings) {
      int rule = (pack << 16) | Objects.requireNonNull(placeOfRule.get(finding.rule()));
      result.marks.hex(plan.entries().mark(record, rule)).put(' ');
    }
    result.marks.put('\n');
    EarlierFindings before = plan.before();
    if (before != null) {
      result.since.record(record, mark, findings.size());
      before.lay(record, pack, judged);
    }
  }

  /** Keeps what the look at the whole batch needs. */
  private void survey(WellRecord record, int pack, byte[] judged, String driller) {
    byte[] kindOf = kindOfRule.get(pack);
    byte[] said = told.get(pack);
    boolean isTold = false;
    for (int i = 0; i < judged.length; i++) {
      boolean isShort = judged[i] == FALLS_SHORT;
      boolean isSaid = isShort || judged[i] == MEETS;
      said[i] = (byte) (isShort ? Told.FALLS_SHORT : isSaid ? Told.MEETS : Told.NOT);
      isTold |= isSaid && kindOf[i] == FindingKind.DEFICIENCY.ordinal();
    }
    boolean isDeficient = kinds[FindingKind.DEFICIENCY.ordinal()] > 0;
    String zone = texts.of(record, ZONE);
    result.survey.add(record, hashes, isDeficient, isTold, pack, said, driller, zone);
  }

  private void count(byte[] judged, byte[] kindOf) {
    Arrays.fill(outcomes, 0);
    Arrays.fill(kinds, 0);
    OutcomeCount.add(judged, outcomes);
    for (int i = 0; i < judged.length && outcomes[FALLS_SHORT] > 0; i++) {
      if (judged[i] == FALLS_SHORT) {
        kinds[kindOf[i]]++;
      }
    }
    for (int i = 0; i < outcomes.length; i++) {
      result.outcomes[i] += outcomes[i];
    }
    for (int i = 0; i < kinds.length; i++) {
      result.kinds[i] += kinds[i];
    }
  }

  private void countAsks(int pack, byte[] judged, AskCounts asks) {
    Screener screener = screeners.get(pack);
    for (int i = 0; i < judged.length; i++) {
      if (judged[i] == CANNOT_TELL) {
        asks.outcome(pack, i, screener.needs(i));
      }
    }
    asks.endRecord();
  }

  /** Findings that nobody has settled; counts them in {@code kinds}. */
  private List<Finding> open(List<Finding> findings) {
    List<Finding> open = findings;
    if (!plan.settled().isEmpty()) {
      open = findings.stream().filter(finding -> plan.settled().of(finding) == null).toList();
      result.settled += findings.size() - open.size();
      Arrays.fill(kinds, 0);
      for (Finding finding : open) {
        kinds[finding.rule().kind().ordinal()]++;
      }
    }
    for (int i = 0; i < kinds.length; i++) {
      result.open[i] += kinds[i];
    }
    return open;
  }

  /** Counts findings that are within a hair of their limit. */
  private void countNear(int pack, List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.isNear()) {
        tallies.get(pack).addNear(Objects.requireNonNull(placeOfRule.get(finding.rule())));
      }
    }
  }

  private void write(
      WellRecord record, String packId, List<Finding> findings, @Nullable Place where) {
    long settled = 0;
    for (Finding finding : findings) {
      Settlement settlement = plan.settled().of(finding);
      settled += settlement == null ? 0 : 1;
      if (plan.request().looks().settled() == null) {
        FindingsCsv.put(result.findings, finding);
      } else {
        FindingsCsv.put(result.findings, finding, settlement);
      }
    }
    FindingsGeoJson.put(result.features, record, packId, findings, settled, where);
  }

  /** Puts the record on the map, by the gravest of its open findings. */
  private void place(@Nullable Place where, int pack, List<Finding> findings) {
    int gravest = MapCells.NONE;
    for (Finding finding : findings) {
      gravest = Math.min(gravest, finding.rule().kind().ordinal());
    }
    if (where != null) {
      result.maps.of(pack).add(where, gravest);
    } else if (gravest < MapCells.NONE) {
      result.maps.of(pack).unplaced();
    }
  }

  private void found(
      WellRecord record,
      int pack,
      List<Finding> findings,
      String water,
      String driller,
      String installer) {
    if (findings.isEmpty()) {
      return;
    }
    result.withFindings++;
    if (kinds[FindingKind.DEFICIENCY.ordinal()] > 0) {
      result.withDeficiency++;
    }
    String elsewhere = NamedElsewhere.of(record, plan.packs().get(pack));
    boolean isNoticed = plan.request().notices().wanted();
    for (Finding finding : isNoticed ? speakers.said(record, pack, findings) : findings) {
      String licence = Whose.licence(record, finding, driller, installer);
      FindingKind kind = finding.rule().kind();
      int place = Objects.requireNonNull(placeOfRule.get(finding.rule()));
      result.licences.finding(licence, kind, firstRule[pack] + place, this.place);
      if (isNoticed && kind != FindingKind.ADVISORY && !licence.isBlank()) {
        result.noticed.put(licence, pack, place, water, elsewhere, finding);
      }
    }
  }

  /** What notices say of the water at once, by key; empty where somebody settled what was found. */
  private String water(WellRecord record, List<Finding> findings, List<Finding> open) {
    return plan.request().notices().wanted() && isOpen(findings, open)
        ? new Urgent(record).key()
        : "";
  }

  /**
   * Whether the sample says that the water cannot wait, and nobody settled what a rule said of it.
   */
  private static boolean isUnfit(WellRecord record, List<Finding> findings, List<Finding> open) {
    return new UnfitWater(record).isUrgent() && isOpen(findings, open);
  }

  /** Whether nobody settled what a rule said of the water. */
  private static boolean isOpen(List<Finding> findings, List<Finding> open) {
    return findings.stream()
        .noneMatch(each -> UnfitWater.isToldBy(each.deciding().entry()) && !open.contains(each));
  }

  /** Keeps the record for the page and the sheets, if it is among the worst. */
  private void keep(
      WellRecord record,
      int pack,
      List<Finding> open,
      boolean flagged,
      boolean unfit,
      String driller,
      String installer,
      @Nullable Place where) {
    if (flagged || unfit || listing.isAnyKept(result)) {
      listing.keep(
          new Listing.Screened(
              Objects.requireNonNull(part).number(),
              place,
              pack,
              record,
              open,
              new KindCounts(kinds[0], kinds[1], kinds[2], kinds[3]),
              flagged,
              unfit,
              outcomes[CANNOT_TELL],
              where),
          driller,
          installer,
          result);
    }
  }

  @Override
  public void setAside(SetAside row) {
    stop.checkWithinPart();
    result.setAside++;
    aside(row);
    ByteText raw = result.rawRows;
    if (raw.length() > 0) {
      raw.put(betweenRows);
    }
    byte[] bytes = row.raw();
    raw.put(bytes, 0, bytes.length);
  }

  private void aside(SetAside row) {
    String text = row.text();
    SetAsideCsv.put(result.setAsideLines, row.file(), row.row(), row.column(), row.reason(), text);
    if (result.setAsideShown.size() < Cap.SET_ASIDE_ON_PAGE.most()) {
      result.setAsideShown.add(
          new SetAsideLine(
              row.file(), row.row(), row.column(), row.reason(), Cap.QUOTED_LETTERS.cut(text)));
    }
  }
}
