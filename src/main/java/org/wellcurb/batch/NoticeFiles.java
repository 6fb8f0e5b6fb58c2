package org.wellcurb.batch;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.NameFold;
import org.wellcurb.report.AnswersCsv;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Cap;
import org.wellcurb.report.ContractorLine;
import org.wellcurb.report.NoticePages;
import org.wellcurb.report.NoticeTemplateException;
import org.wellcurb.report.NoticeView;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SafeNames;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Cautions;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Harm;

/**
 * Writes the correction notices, and beside each the table to fill in and return. A notice asks
 * about what falls short of a limit, contradicts itself or is left out; advisories are nobody's
 * duty, so it leaves them out and says how many there are.
 */
final class NoticeFiles {
  private final Plan plan;
  private final Path folder;
  private final Stop stop;
  private final NoticePages pages;

  /** Address of each licence's notice, by {@link NameFold}. */
  private final Map<String, String> addresses = new LinkedHashMap<>();

  /** What is kept for one notice. */
  private static final class Kept {
    final String licence;
    final List<Finding> findings = new ArrayList<>();
    final List<Pack> packs = new ArrayList<>();
    final Map<String, String> waters = new HashMap<>();
    final Map<String, String> elsewhere = new HashMap<>();
    final long advisories;
    long total;

    Kept(ContractorLine line) {
      this.licence = line.licence();
      this.advisories = line.kinds().advisory();
    }

    /** Keeps it where there is room; what cannot wait takes the place of the last that can. */
    boolean add(Finding finding) {
      if (findings.size() < Cap.FINDINGS_IN_NOTICE.most()) {
        return findings.add(finding);
      }
      for (int i = findings.size() - 1; i >= 0 && Harm.of(finding.rule()).isNow(); i--) {
        if (!Harm.of(findings.get(i).rule()).isNow()) {
          findings.remove(i);
          return findings.add(finding);
        }
      }
      return false;
    }
  }

  NoticeFiles(Plan plan, Path folder, NoticePages pages, Stop stop) {
    this.plan = plan;
    this.folder = folder;
    this.pages = pages;
    this.stop = stop;
  }

  /**
   * Writes notices for the first licences, most records that fall short first, and removes the log.
   *
   * @param log the findings that wait, in input order
   * @return how many licences have something to be asked
   */
  int write(Path log, List<ContractorLine> licences) throws IOException, RunFailure {
    Map<String, Kept> chosen = new LinkedHashMap<>();
    int asked = 0;
    for (ContractorLine line : licences) {
      if (!line.licence().isBlank() && line.kinds().total() > line.kinds().advisory()) {
        asked++;
        if (chosen.size() < plan.request().notices().most()) {
          chosen.put(NameFold.of(line.licence()), new Kept(line));
        }
      }
    }
    if (!chosen.isEmpty()) {
      collect(log, chosen);
      Files.createDirectory(folder.resolve(Outputs.NOTICES));
      SafeNames names = new SafeNames();
      for (Map.Entry<String, Kept> each : chosen.entrySet()) {
        stop.check();
        write(each.getKey(), each.getValue(), names);
      }
    }
    Files.delete(log);
    return asked;
  }

  private void collect(Path log, Map<String, Kept> chosen) throws IOException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(log), 1 << 16))) {
      for (NoticeLog.Noted noted = NoticeLog.read(in, plan.packs());
          noted != null;
          noted = NoticeLog.read(in, plan.packs())) {
        Kept kept = chosen.get(NameFold.of(noted.licence()));
        if (kept != null) {
          kept.total++;
          if (kept.add(noted.finding())) {
            if (!noted.water().isEmpty()) {
              kept.waters.put(NoticeView.where(noted.finding()), noted.water());
            }
            if (!noted.elsewhere().isEmpty()) {
              kept.elsewhere.put(NoticeView.where(noted.finding()), noted.elsewhere());
            }
            Pack pack = plan.packs().get(noted.pack());
            if (!kept.packs.contains(pack)) {
              kept.packs.add(pack);
            }
          }
        }
      }
    }
  }

  private void write(String key, Kept kept, SafeNames names) throws IOException, RunFailure {
    String page = names.name(kept.licence, ".html");
    String table = page.substring(0, page.length() - ".html".length()) + ".csv";
    List<Finding> findings = gravestFirst(kept);
    NoticeView view =
        new NoticeView(
            kept.licence,
            plan.request().asOf(),
            plan.request().asOf().plusDays(plan.request().notices().replyDays()),
            kept.packs,
            findings,
            kept.total,
            kept.advisories,
            table,
            kept.waters,
            kept.elsewhere,
            Cautions.ofWork(findings));
    Path notices = folder.resolve(Outputs.NOTICES);
    String html = page(view);
    Files.write(notices.resolve(page), html.getBytes(StandardCharsets.UTF_8));
    ByteText answers = new ByteText().put(AnswersCsv.HEADER);
    for (int i = 0; i < findings.size(); i++) {
      AnswersCsv.put(answers, i + 1, kept.licence, findings.get(i));
    }
    ReportFiles.write(notices.resolve(table), answers);
    addresses.put(key, Outputs.NOTICES + "/" + page);
  }

  /**
   * Records whose water is unfit, then those with the gravest finding first, among equals as they
   * came; the findings of each in the order of {@link Harm}.
   */
  private static List<Finding> gravestFirst(Kept kept) {
    List<Finding> findings = kept.findings;
    List<List<Finding>> records = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= findings.size(); to++) {
      if (to == findings.size()
          || !NoticeView.where(findings.get(from)).equals(NoticeView.where(findings.get(to)))) {
        records.add(Harm.gravestFirst(findings.subList(from, to)));
        from = to;
      }
    }
    records.sort(
        Comparator.comparing(
                (List<Finding> record) -> !kept.waters.containsKey(NoticeView.where(record.get(0))))
            .thenComparing(record -> record.get(0).rule(), Harm.GRAVEST_FIRST));
    return records.stream().flatMap(List::stream).toList();
  }

  private String page(NoticeView view) throws RunFailure {
    try {
      return pages.notice(view);
    } catch (NoticeTemplateException e) {
      throw RunFailure.unusable(String.valueOf(e.getMessage()), e);
    }
  }

  /** How many were written. */
  int written() {
    return addresses.size();
  }

  /** The address of the notice of this licence; empty if there is none. */
  String address(String licence) {
    @Nullable String address = addresses.get(NameFold.of(licence));
    return address == null ? "" : address;
  }
}
