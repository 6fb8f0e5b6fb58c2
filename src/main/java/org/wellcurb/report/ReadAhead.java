package org.wellcurb.report;

/**
 * Reads what pages are made of on a thread of its own, while packs and records are read. It stands
 * apart from {@link Pages}, so that not even their styles and scripts are read by who starts it.
 */
public final class ReadAhead {
  private ReadAhead() {}

  /** Begins to read the words of these pages and the templates of a run. */
  public static void begin(PageStyle style) {
    Thread reader = new Thread(() -> read(style), "templates");
    reader.setDaemon(true);
    // What fails here fails again, and is said, where the page is made.
    reader.setUncaughtExceptionHandler((thread, failure) -> {});
    reader.start();
  }

  private static void read(PageStyle style) {
    new Pages(style).readTemplates();
  }
}
