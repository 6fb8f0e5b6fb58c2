package org.wellcurb.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.HeaderMap;
import org.wellcurb.intake.HeaderMaps;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.IntakeException;
import org.wellcurb.intake.MapException;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.NoticePages;
import org.wellcurb.report.NoticeTemplateException;
import org.wellcurb.report.OfficeNotice;
import org.wellcurb.report.Pages;
import org.wellcurb.report.ReadAhead;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Opens what a run is given: header map, packs, inputs. All that is wrong is said in one go. */
final class Opening {
  private Opening() {}

  /** The header map of this file; none where no file is given. */
  static HeaderMap headers(@Nullable Path path) throws RunFailure {
    if (path == null) {
      return HeaderMap.NONE;
    }
    try {
      return HeaderMaps.load(path, path.toString(), Catalogue.standard());
    } catch (MapException e) {
      throw RunFailure.unusable(String.valueOf(e.getMessage()), e);
    }
  }

  /** Reads the templates of the pages that ship while packs are read. */
  static void readAhead(ScreenRequest request) {
    if (request.notices().template() == null) {
      ReadAhead.begin(request.output().style());
    }
  }

  /** What makes the notices: an office's own template, tried, or the form that ships. */
  static NoticePages notices(ScreenRequest request) throws RunFailure {
    Path template = request.notices().template();
    try {
      if (template == null) {
        return new Pages(request.output().style());
      }
      return new OfficeNotice(template, request.output().style());
    } catch (NoticeTemplateException e) {
      throw RunFailure.unusable(String.valueOf(e.getMessage()), e);
    }
  }

  /** The packs of these names, folders or files. */
  static List<Pack> packs(List<String> names) throws RunFailure {
    List<Pack> packs = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (String name : names) {
      try {
        packs.add(PackLoader.load(name));
      } catch (PackException e) {
        problems.add(String.valueOf(e.getMessage()));
      }
    }
    if (!problems.isEmpty()) {
      throw RunFailure.unusable(String.join("\n", problems));
    }
    return packs;
  }

  /** The first file that was passed over, and why; empty if none was. */
  private static String passedOver(Inputs inputs) {
    return inputs.passedOver().stream()
        .findFirst()
        .map(file -> " (" + file.file() + ": " + file.reason() + ")")
        .orElse("");
  }

  /**
   * The inputs, and their hashes under way.
   *
   * @param records files and folders, or {@code -}
   * @param out the folder that the run replaces: no input may stand in it
   * @param headers the file of the header map, hashed too; null if there is none
   */
  static Inputs inputs(
      List<String> records, Path out, @Nullable Path headers, Sources sources, Hashes hashes)
      throws RunFailure {
    Inputs inputs;
    try {
      inputs = sources.prepare(Inputs.of(records, hashes.standardInput()));
    } catch (IntakeException e) {
      throw RunFailure.noInput(String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw RunFailure.noInput(
          String.join(" ", records)
              + ": cannot be read: "
              + Folders.reason(e)
              + "; nothing was written");
    }
    if (inputs.inputs().isEmpty()) {
      throw RunFailure.noInput(
          String.join(" ", records)
              + ": holds no records"
              + passedOver(inputs)
              + "; give files that end in .csv, .tsv, .txt, .json, .jsonl, .ndjson or .xlsx");
    }
    Path whole = out.toAbsolutePath().normalize();
    List<Path> paths = new ArrayList<>();
    for (Input input : inputs.inputs()) {
      Path path = input.path();
      if (path != null) {
        if (path.toAbsolutePath().normalize().startsWith(whole)) {
          throw RunFailure.unusable(
              path + ": stands in " + out + ", which this run replaces; copy it out first");
        }
        paths.add(path);
      }
    }
    if (headers != null) {
      paths.add(headers);
    }
    hashes.start(paths);
    return inputs;
  }
}
