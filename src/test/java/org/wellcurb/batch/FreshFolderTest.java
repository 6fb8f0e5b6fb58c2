package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FreshFolderTest {
  private static final String OURS = "{\n  \"program\": \"wellcurb\"\n}\n";

  @TempDir Path dir;

  @Test
  void absentFolderIsMadeWithItsParents() throws Exception {
    Path target = dir.resolve("a/b/report");
    write(target, "new");
    assertEquals("new", Files.readString(target.resolve("index.html")));
    assertEquals(List.of("report"), names(dir.resolve("a/b")));
  }

  @Test
  void emptyFolderIsReplaced() throws Exception {
    Path target = Files.createDirectory(dir.resolve("report"));
    write(target, "new");
    assertEquals("new", Files.readString(target.resolve("index.html")));
  }

  @Test
  void earlierReportIsReplacedWhole() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    Files.createDirectory(target.resolve("sheets"));
    Files.writeString(target.resolve("sheets/w.html"), "old");
    write(target, "two");
    assertEquals("two", Files.readString(target.resolve("index.html")));
    assertEquals(List.of("index.html", "run.json"), names(target));
    assertEquals(List.of("report"), names(dir));
  }

  @Test
  void failedRunLeavesTheEarlierReportAndNothingElse() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    try (FreshFolder folder = FreshFolder.beside(target)) {
      Files.writeString(folder.path().resolve("index.html"), "half");
    }
    assertEquals("one", Files.readString(target.resolve("index.html")));
    assertEquals(List.of("report"), names(dir));
  }

  @Test
  void failedRunRemovesTheParentsThatItMade() throws Exception {
    try (FreshFolder folder = FreshFolder.beside(dir.resolve("a/b/report"))) {
      assertTrue(Files.isDirectory(folder.path()));
    }
    assertEquals(List.of(), names(dir));
  }

  @Test
  void folderThatHoldsSomethingElseIsRefused() throws Exception {
    Path target = Files.createDirectory(dir.resolve("report"));
    Files.writeString(target.resolve("letter.txt"), "mine");
    assertRefused(target, "letter.txt");
    assertEquals("mine", Files.readString(target.resolve("letter.txt")));
  }

  @Test
  void earlierReportToWhichSomeoneAddedAFileIsRefused() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    Files.writeString(target.resolve("notes.txt"), "mine");
    assertRefused(target, "notes.txt");
    assertEquals("mine", Files.readString(target.resolve("notes.txt")));
  }

  @Test
  void runJsonOfAnotherProgramIsRefused() throws Exception {
    Path target = Files.createDirectory(dir.resolve("report"));
    Files.writeString(target.resolve("run.json"), "{\"program\": \"other\"}");
    assertRefused(target, "run.json");
  }

  @Test
  void fileInPlaceOfTheFolderIsRefused() throws Exception {
    Path target = Files.writeString(dir.resolve("report"), "mine");
    assertRefused(target, "not a folder");
    assertEquals("mine", Files.readString(target));
  }

  @Test
  void linkInPlaceOfTheFolderIsRefused() throws Exception {
    Path elsewhere = Files.createDirectory(dir.resolve("elsewhere"));
    Path target = Files.createSymbolicLink(dir.resolve("report"), elsewhere);
    assertRefused(target, "not a folder");
    assertTrue(Files.isSymbolicLink(target));
  }

  @Test
  void linkInsideAnEarlierReportIsRemovedAndNotFollowed() throws Exception {
    Path elsewhere = Files.createDirectory(dir.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("kept.txt"), "kept");
    Path target = dir.resolve("report");
    write(target, "one");
    Files.createSymbolicLink(target.resolve("sheets"), elsewhere);
    write(target, "two");
    assertFalse(Files.exists(target.resolve("sheets")));
    assertEquals("kept", Files.readString(elsewhere.resolve("kept.txt")));
  }

  @Test
  void parentThatIsAFileIsRefused() throws Exception {
    Files.writeString(dir.resolve("file"), "mine");
    assertRefused(dir.resolve("file/report"), "cannot be written");
  }

  @Test
  void workingFolderIsRefused() {
    assertRefused(Path.of("."), "the folder you are in");
    assertRefused(Path.of("..").toAbsolutePath().normalize(), "the folder you are in");
  }

  @Test
  void rootIsRefused() {
    assertRefused(Path.of("/"), "cannot be replaced");
  }

  @Test
  void secondRunIntoTheSameFolderIsRefusedWhileTheFirstWrites() throws Exception {
    Path target = dir.resolve("report");
    try (FreshFolder first = FreshFolder.beside(target)) {
      assertRefused(target, "another run");
      assertTrue(Files.isDirectory(first.path()));
    }
    write(target, "after");
  }

  @Test
  void leftoversOfAKilledRunGoAtTheNext() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    Path half = Files.createDirectory(dir.resolve(".report.wellcurb-new"));
    Files.writeString(half.resolve("index.html"), "half");
    Files.writeString(dir.resolve(".report.wellcurb-lock"), "1 2");
    write(target, "two");
    assertEquals(List.of("report"), names(dir));
    assertEquals("two", Files.readString(target.resolve("index.html")));
  }

  @Test
  void earlierReportSetAsideByAKilledRunComesBack() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    Files.move(target, dir.resolve(".report.wellcurb-old"));
    try (FreshFolder folder = FreshFolder.beside(target)) {
      assertTrue(Files.isDirectory(folder.path()));
    }
    assertEquals("one", Files.readString(target.resolve("index.html")));
    assertEquals(List.of("report"), names(dir));
  }

  @Test
  void killBetweenSwapAndRemovalLeavesTheNewReport() throws Exception {
    Path target = dir.resolve("report");
    write(target, "one");
    Files.move(target, dir.resolve(".report.wellcurb-old"));
    write(dir.resolve("other"), "two");
    Files.move(dir.resolve("other"), target);
    try (FreshFolder folder = FreshFolder.beside(target)) {
      assertTrue(Files.isDirectory(folder.path()));
    }
    assertEquals("two", Files.readString(target.resolve("index.html")));
    assertEquals(List.of("report"), names(dir));
  }

  private static void write(Path target, String index) throws IOException, RunFailure {
    try (FreshFolder folder = FreshFolder.beside(target)) {
      Files.writeString(folder.path().resolve("index.html"), index);
      Files.writeString(folder.path().resolve("run.json"), OURS);
      folder.swapIn();
    }
  }

  private static void assertRefused(Path target, String saying) {
    RunFailure failure = assertThrows(RunFailure.class, () -> FreshFolder.beside(target).close());
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    assertTrue(failure.line().startsWith(target + ": "), failure.line());
    assertTrue(failure.line().contains(saying), failure.line());
    assertEquals(1, failure.line().lines().count());
  }

  private static List<String> names(Path folder) throws IOException {
    return Folders.list(folder).stream().map(p -> p.getFileName().toString()).toList();
  }
}
