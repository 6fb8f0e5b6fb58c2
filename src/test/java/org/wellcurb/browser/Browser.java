package org.wellcurb.browser;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A real browser without a window, for tests of pages: Debian's chromium and its driver. */
public final class Browser implements AutoCloseable {
  private final ChromeDriver driver;
  private final Path profile;

  private Browser(ChromeDriver driver, Path profile) {
    this.driver = driver;
    this.profile = profile;
  }

  /** Starts one with a profile of its own and the network off. */
  public static Browser start() {
    File chromium = found("chromium", "chromium-browser");
    File service = found("chromedriver");
    try {
      Path profile = Files.createTempDirectory("wellcurb-browser");
      ChromeOptions options = new ChromeOptions();
      options.setBinary(chromium);
      options.addArguments(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--disable-dev-shm-usage",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--hide-scrollbars",
          "--force-color-profile=srgb",
          "--user-data-dir=" + profile);
      LoggingPreferences logs = new LoggingPreferences();
      logs.enable(LogType.BROWSER, Level.ALL);
      options.setCapability("goog:loggingPrefs", logs);
      ChromeDriverService.Builder builder =
          new ChromeDriverService.Builder().usingDriverExecutable(service).withSilent(true);
      Browser browser = new Browser(new ChromeDriver(builder.build(), options), profile);
      browser.command("Network.enable", Map.of());
      browser.command(
          "Network.emulateNetworkConditions",
          Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
      return browser;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static File found(String... names) {
    for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
      for (String name : names) {
        File file = new File(folder, name);
        if (file.canExecute()) {
          return file;
        }
      }
    }
    throw new IllegalStateException(
        "no " + names[0] + " on the path: install the packages chromium and chromium-driver");
  }

  public ChromeDriver driver() {
    return driver;
  }

  /** Lets it reach this machine, for pages that are served on it. */
  public Browser local() {
    command(
        "Network.emulateNetworkConditions",
        Map.of("offline", false, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    return this;
  }

  /** Keeps what pages save in this folder. */
  public Browser downloads(Path folder) {
    command(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toAbsolutePath().toString()));
    return this;
  }

  /** Shows pages as they print, or again as they stand on a screen. */
  public Browser asPrinted(boolean printed) {
    command("Emulation.setEmulatedMedia", Map.of("media", printed ? "print" : ""));
    return this;
  }

  /** Lets pages run scripts of their own, or not. */
  public Browser scripts(boolean run) {
    command("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
    return this;
  }

  /** Opens a file at this width (CSS pixels). */
  public Browser open(Path page, int width) {
    width(width);
    driver.get(page.toUri().toString());
    return this;
  }

  /** Makes the window this wide. */
  public Browser width(int width) {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    return this;
  }

  /** What the page wrote to the console as errors or warnings since it was opened. */
  public List<String> complaints() {
    List<String> lines = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      if (entry.getLevel().intValue() >= Level.WARNING.intValue()) {
        lines.add(entry.getMessage());
      }
    }
    return lines;
  }

  /** What axe-core finds against WCAG 2.2 A and AA and its best practices, one line each. */
  public List<String> barriers() {
    Results results =
        new AxeBuilder()
            .withTags(
                List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
            .analyze(driver);
    List<String> lines = new ArrayList<>();
    for (Rule rule : results.getViolations()) {
      lines.add(rule.getId() + ": " + rule.getHelp() + " at " + rule.getNodes().get(0).getHtml());
    }
    return lines;
  }

  /** By how many pixels the page is wider than the window. */
  public long sideways() {
    Object wider =
        driver.executeScript(
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    return (Long) wider;
  }

  /** What reaches beyond the right edge of the window, for the message of a test. */
  public String wide() {
    return String.valueOf(
        driver.executeScript(
            "return [...document.querySelectorAll('body *')].filter(e =>"
                + " e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)"
                + ".map(e => e.tagName + '#' + e.id + '.' + e.className).slice(0, 12)"));
  }

  /** The page printed as PDF on this paper (inches). */
  public byte[] print(double paperWidth, double paperHeight) {
    Map<String, Object> made =
        command(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                paperWidth,
                "paperHeight",
                paperHeight,
                "printBackground",
                true,
                "preferCSSPageSize",
                false));
    return Base64.getDecoder().decode((String) made.get("data"));
  }

  /** A picture of the top of the page, as wide as the window and this high, as PNG. */
  public byte[] picture(int width, int height) {
    Map<String, Object> made =
        command(
            "Page.captureScreenshot",
            Map.of(
                "format",
                "png",
                "captureBeyondViewport",
                true,
                "clip",
                Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1)));
    return Base64.getDecoder().decode((String) made.get("data"));
  }

  /** A picture of the whole page, as PNG. */
  public byte[] picture() {
    Map<String, Object> made =
        command("Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
    return Base64.getDecoder().decode((String) made.get("data"));
  }

  /** A command of the browser's own protocol. */
  public Map<String, Object> command(String name, Map<String, Object> arguments) {
    return driver.executeCdpCommand(name, arguments);
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
