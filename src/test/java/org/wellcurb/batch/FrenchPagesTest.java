package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.PackLoader;

/**
 * No words of the English bundles are left on French pages. What a pack or the reading of a file
 * says is marked as English and is not looked at, nor are a record's own words, which stand in
 * quotes.
 */
class FrenchPagesTest {
  private static final Words EN = Words.in(Language.EN);
  private static final Words FR = Words.in(Language.FR);
  private static final PageStyle STYLE = new PageStyle(Language.FR, UnitsShown.AS_WRITTEN);

  /** Shorter pieces of sentences stand in other words by chance. */
  private static final int LEAST = 9;

  @TempDir Path dir;

  @Test
  void noEnglishIsLeft() throws Exception {
    List<Path> packs;
    try (Stream<Path> all = Files.list(Path.of("rules"))) {
      packs = all.filter(each -> Files.exists(each.resolve("pack.json"))).sorted().toList();
    }
    assertTrue(packs.size() > 10);
    Map<String, String> pages = new TreeMap<>();
    Pages french = new Pages(STYLE);
    for (Path pack : packs) {
      String name = pack.getFileName().toString();
      pages.put("rulebook " + name, french.rulebook(PackLoader.load(name)));
      Path out = dir.resolve(name);
      run(out, List.of(name), LookOptions.PLAIN);
      collect(out, name, pages);
    }
    Path both = dir.resolve("both");
    List<String> two = List.of("fenwick-county", "tarn-district");
    run(both, two, LookOptions.PLAIN);
    Path again = dir.resolve("again");
    run(again, two, new LookOptions(true, null, null, dir.resolve("fenwick-county")));
    collect(again, "again", pages);
    Path rehearsed = dir.resolve("rehearsed");
    new RehearseRun(
            new RehearseRequest(
                InputOptions.of(List.of("sample-records")),
                "fenwick-county",
                "tarn-district",
                rehearsed,
                Runs.AS_OF,
                1,
                100,
                STYLE),
            Progress.SILENT,
            new Stop())
        .run();
    collect(rehearsed, "rehearsed", pages);
    pages.put("blank", french.blank(Catalogue.standard()));
    assertTrue(pages.keySet().stream().anyMatch(each -> each.contains("since.html")));
    assertTrue(pages.keySet().stream().anyMatch(each -> each.contains("notices")));

    Map<String, String> pieces = pieces();
    Map<String, String> whole = whole();
    assertTrue(pieces.size() > 200 && whole.size() > 300, pieces.size() + " " + whole.size());
    Set<String> left = new TreeSet<>();
    pages.forEach(
        (page, html) -> {
          String body = body(html);
          for (String node : body.split("\u0000")) {
            String text = node.strip();
            if (whole.containsKey(text)) {
              left.add(whole.get(text) + " = " + text + "   (on " + page + ")");
            }
          }
          String lower = body.replaceAll("[\u0000\\s]+", " ");
          pieces.forEach(
              (piece, key) -> {
                if (holds(lower, piece)) {
                  left.add(key + " ~ " + piece + "   (on " + page + ")");
                }
              });
        });
    assertEquals("", String.join("\n", left));
  }

  private void run(Path out, List<String> packs, LookOptions looks) throws RunFailure {
    Runs.run(
        ScreenRequest.plain(List.of("sample-records"), packs, out, Runs.AS_OF)
            .with(OutputOptions.PLAIN.with(SheetsFor.FLAGGED, 12).styled(STYLE))
            .with(looks)
            .by(2));
  }

  private static void collect(Path out, String name, Map<String, String> pages) {
    Runs.files(out)
        .forEach(
            (file, text) -> {
              if (file.endsWith(".html")) {
                byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
                pages.put(name + "/" + file, new String(bytes, StandardCharsets.UTF_8));
              }
            });
  }

  /** Runs of words of English texts that French texts lack, by the key that has them. */
  private static Map<String, String> pieces() {
    StringBuilder french = new StringBuilder();
    FR.keys().forEach(key -> french.append(raw(FR, key)).append('\n'));
    Map<String, String> pieces = new LinkedHashMap<>();
    for (String key : EN.keys()) {
      for (String part : raw(EN, key).split("[{][0-9][}]|[“”]")) {
        String piece = part.strip();
        boolean isSaid = piece.length() >= LEAST && piece.contains(" ");
        if (isSaid && french.indexOf(piece) < 0) {
          pieces.put(piece, key);
        }
      }
    }
    return pieces;
  }

  /** English texts that stand alone, where French says otherwise. */
  private static Map<String, String> whole() {
    Set<String> french = new TreeSet<>();
    FR.keys().forEach(key -> french.add(raw(FR, key)));
    Map<String, String> whole = new LinkedHashMap<>();
    for (String key : EN.keys()) {
      String text = raw(EN, key);
      if (!text.contains("{") && text.matches(".*\\p{L}{2}.*") && !french.contains(text)) {
        whole.put(text, key);
      }
    }
    return whole;
  }

  private static String raw(Words words, String key) {
    Object[] places = new Object[12];
    for (int i = 0; i < places.length; i++) {
      places[i] = "{" + i + "}";
    }
    return words.say(key, places);
  }

  /** What a reader sees and hears, without what is marked as English; nodes are parted by NUL. */
  /** True if a text holds these words, not as the end of a longer one ("la distance"). */
  private static boolean holds(String text, String words) {
    int at = text.indexOf(words);
    while (at > 0 && Character.isLetter(text.charAt(at - 1))) {
      at = text.indexOf(words, at + 1);
    }
    return at >= 0;
  }

  private static String body(String html) {
    String text =
        html.replaceAll("(?s)<(style|script|title)>.*?</\\1>", "")
            .replaceAll("(?s)<span lang=\"en\">[^<]*</span>", "")
            .replaceAll("“[^”<]*”|«[ \u00a0][^»<]*[ \u00a0]»", "");
    List<String> said = new ArrayList<>();
    Matcher heard =
        Pattern.compile("(?:aria-label|data-l|data-[a-z]+|title|content)=\"([^\"]*)\"")
            .matcher(text);
    while (heard.find()) {
      said.add(heard.group(1));
    }
    String all = text.replaceAll("(?s)<[^>]*>", "\u0000") + "\u0000" + String.join("\u0000", said);
    return all.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
