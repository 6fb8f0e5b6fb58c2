package org.wellcurb.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.FrenchSpaces;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.RecordResult;

/**
 * The pages of a run, as HTML that needs no network: styles and scripts stand in the page, and its
 * content security policy lets nothing else act. The same values give the same page. May be shared
 * between threads.
 */
public final class Pages implements NoticePages {
  private static final Inline STYLE = Inline.of("pages.css");
  private static final Inline SCRIPT = Inline.of("pages.js");
  private static final Inline DESK_STYLE = Inline.of("desk.css");
  private static final Inline DESK_SCRIPT = Inline.of("desk.js");

  private final PageStyle style;
  private final Words words;

  public Pages(PageStyle style) {
    this.style = style;
    words = Words.in(style.language());
  }

  /** Reads the templates of a run, so that they are found read. */
  void readTemplates() {
    Templates.read("sheet.ftl");
    Templates.read("index.ftl");
  }

  /**
   * The record sheet.
   *
   * @param result what was screened
   * @param asOf as-of date of the run
   * @param index address of the batch page from the sheet; empty if there is none
   */
  public String sheet(RecordResult result, LocalDate asOf, String index) {
    return sheet(result, asOf, index, finding -> null);
  }

  /**
   * The record sheet.
   *
   * @param settled how a finding was settled; null where it is open
   */
  public String sheet(
      RecordResult result,
      LocalDate asOf,
      String index,
      Function<Finding, @Nullable Settlement> settled) {
    return page("sheet.ftl", new SheetMaker(result, style, settled).sheet(asOf), index);
  }

  /**
   * The record sheet of a form, within another page.
   *
   * @param remark what is to be said of the whole form before anything else; may be empty
   */
  public String formSheet(RecordResult result, LocalDate asOf, String remark) {
    return page(
        "sheet.ftl", new SheetMaker(result, style, finding -> null).sheet(asOf), "", remark);
  }

  /** The style sheet that prints whose sheet it is at the foot of each sheet of paper. */
  public String foot(RecordResult result) {
    return RunningFoot.of(words.say("sheet.title", result.record().id())).text();
  }

  /** The batch page. */
  public String index(BatchView batch) {
    return page("index.ftl", new IndexMaker(batch, style).index(), "");
  }

  @Override
  public String notice(NoticeView notice) {
    return page("notice.ftl", NoticePage.of(notice, style), "");
  }

  /** A pack as a printable rulebook. */
  public String rulebook(Pack pack) {
    return page("rulebook.ftl", new RulebookMaker(pack, style).page(), "");
  }

  /** The same records under two packs. */
  public String rehearsal(RehearsalView rehearsal) {
    return page("rehearsal.ftl", RehearsalPage.of(rehearsal, style), "");
  }

  /** What changed since an earlier report. */
  public String since(SinceView since) {
    return page("since.ftl", SincePage.of(since, words), Outputs.INDEX);
  }

  /** An empty form for print. */
  public String blank(Catalogue catalogue) {
    return page("blank.ftl", BlankPage.of(catalogue, style), "");
  }

  /**
   * The desk: a form whose sheet changes as one types.
   *
   * @param token what the page must send back with what it asks
   */
  public String desk(Catalogue catalogue, List<Pack> packs, String token) {
    List<PackLine> lines = packs.stream().map(PackLine::of).toList();
    return page(
        "desk.ftl",
        new DeskPage(
            BlankPage.ofBoth(catalogue, style).groups(),
            lines,
            KnownWords.of(packs),
            token,
            Bounds.DESK_BODY,
            Bounds.DESK_BODY >> 20),
        "");
  }

  private String page(String template, Object view, String index) {
    return page(template, view, index, "");
  }

  private String page(String template, Object view, String index, String remark) {
    Map<String, Object> values = new HashMap<>();
    values.put("remark", remark);
    values.put("v", view);
    values.put("index", index);
    values.put("lang", style.language().code());
    values.put("css", markup(STYLE.text()));
    values.put("cssHash", markup(STYLE.hash()));
    values.put("js", markup(SCRIPT.text()));
    values.put("jsHash", markup(SCRIPT.hash()));
    values.put("deskCss", markup(DESK_STYLE.text()));
    values.put("deskCssHash", markup(DESK_STYLE.hash()));
    values.put("deskJs", markup(DESK_SCRIPT.text()));
    values.put("deskJsHash", markup(DESK_SCRIPT.hash()));
    values.put(
        "running", (TemplateMethodModelEx) arguments -> running(arguments.get(0).toString()));
    values.put(
        "inGallons",
        (TemplateMethodModelEx) arguments -> GallonsShown.in(arguments.get(0).toString()));
    values.put("t", (TemplateMethodModelEx) this::say);
    values.put("n", (TemplateMethodModelEx) this::count);
    values.put("o", (TemplateMethodModelEx) arguments -> style.said(arguments.get(0).toString()));
    values.put("set", (TemplateMethodModelEx) arguments -> set(arguments.get(0).toString()));
    values.put("svg", (TemplateMethodModelEx) arguments -> markup(arguments.get(0).toString()));
    return Templates.fill(template, values);
  }

  private static Object running(String title) {
    Inline foot = RunningFoot.of(title);
    return Map.of("css", markup(foot.text()), "hash", markup(foot.hash()));
  }

  /** Text of our own making that is HTML already. */
  private static Object markup(String html) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html);
    } catch (TemplateModelException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A text of a drawing, which breaks its own lines, where it stands among the page's. */
  private String set(String text) {
    return style.language() == Language.FR ? FrenchSpaces.set(text) : text;
  }

  private Object say(List<?> arguments) {
    return words.say(arguments.get(0).toString(), arguments.subList(1, arguments.size()).toArray());
  }

  private Object count(List<?> arguments) throws TemplateModelException {
    long many = ((TemplateNumberModel) arguments.get(1)).getAsNumber().longValue();
    return words.count(
        arguments.get(0).toString(), many, arguments.subList(2, arguments.size()).toArray());
  }
}
