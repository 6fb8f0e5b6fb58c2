package org.wellcurb.report;

import freemarker.cache.FileTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Correction notices from an office's own FreeMarker template, so that they carry its letterhead.
 *
 * <p>A template is a program, and this one came from outside: it sees plain texts, numbers and
 * lists and nothing else; it makes no object, evaluates no text, reads no file outside its folder;
 * whatever it prints is escaped as HTML; and what it writes, and how long it takes, are bounded.
 */
public final class OfficeNotice implements NoticePages {
  /** Letters that one file of a template may have. */
  private static final int MOST_SOURCE = 1 << 20;

  /** Letters that one notice may have. */
  private static final int MOST_OUTPUT = 1 << 22;

  /** Seconds that one notice may take: a template that needs more does not end. */
  private static final int MOST_SECONDS = 20;

  /** What turns a text into a program, or a name into a class. */
  private static final Pattern REFUSED =
      Pattern.compile("\\?\\s*(eval_json|eval|interpret|new|api|with_args|with_args_last)\\b");

  /** What escapes otherwise than HTML does. */
  private static final Pattern FORMATS = Pattern.compile("<#output_?[fF]ormat\\b");

  private static final String OTHER_FORMAT =
      "sets another output format than HTML; a notice is an HTML page, so leave the format out";

  /** The clock: the same records must give the same bytes on another day. */
  private static final Pattern CLOCK = Pattern.compile("(?<![\\w.)\\]])\\.\\s*now\\b");

  private final String file;
  private final Template template;
  private final PageStyle style;

  /**
   * Reads a template and tries it on a notice of our own invention.
   *
   * @throws NoticeTemplateException if it cannot be read, asks for what it may not have, or fails
   */
  public OfficeNotice(Path path, PageStyle style) throws NoticeTemplateException {
    this.file = path.toString();
    this.style = style;
    Path whole = path.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    Path name = whole.getFileName();
    if (folder == null || name == null || !Files.isRegularFile(whole)) {
      throw new NoticeTemplateException(
          file + ": there is no such file; name a template with --notice");
    }
    try {
      Configuration configuration = configuration();
      configuration.setTemplateLoader(
          new Checked(new FileTemplateLoader(folder.toFile()), configuration));
      template = configuration.getTemplate(name.toString());
    } catch (ParseException e) {
      throw new NoticeTemplateException(
          at(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber())
              + firstLine(e.getEditorMessage()),
          e);
    } catch (IOException e) {
      throw new NoticeTemplateException(file + ": " + firstLine(e.getMessage()), e);
    }
    fill(NoticeValues.sample());
  }

  @Override
  public String notice(NoticeView notice) throws NoticeTemplateException {
    return fill(NoticeValues.of(NoticePage.of(notice, style)));
  }

  private String fill(Map<String, Object> values) throws NoticeTemplateException {
    ExecutorService thread = Executors.newSingleThreadExecutor(OfficeNotice::thread);
    try {
      Future<String> page =
          thread.submit(
              () -> {
                Bounded out = new Bounded();
                template.process(values, out);
                return out.toString();
              });
      return page.get(MOST_SECONDS, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      throw new NoticeTemplateException(
          file + ": does not end within " + MOST_SECONDS + " s; look for a loop that never ends",
          e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new NoticeTemplateException(file + ": interrupted", e);
    } catch (ExecutionException e) {
      throw failed(e.getCause() == null ? e : e.getCause());
    } finally {
      thread.shutdownNow();
    }
  }

  private NoticeTemplateException failed(Throwable cause) {
    if (cause instanceof StackOverflowError) {
      return new NoticeTemplateException(
          file + ": calls itself without end; look for a macro that calls itself", cause);
    }
    if (cause instanceof OutOfMemoryError) {
      return new NoticeTemplateException(
          file + ": takes more memory than there is; look for a text or a list that keeps doubling",
          cause);
    }
    if (cause instanceof TemplateException e) {
      Integer line = e.getLineNumber();
      Integer column = e.getColumnNumber();
      return new NoticeTemplateException(
          at(e.getTemplateSourceName(), line == null ? 0 : line, column == null ? 0 : column)
              + reason(e),
          cause);
    }
    return new NoticeTemplateException(file + ": " + firstLine(cause.getMessage()), cause);
  }

  private String at(@org.jspecify.annotations.Nullable String name, int line, int column) {
    String place = name == null || file.endsWith(name) ? file : file + " (" + name + ")";
    return place + (line > 0 ? ":" + line + ":" + column : "") + ": ";
  }

  private static String firstLine(@org.jspecify.annotations.Nullable String message) {
    if (message == null || message.isBlank()) {
      return "cannot be used";
    }
    // A line that ends in a colon leaves its reason to the next.
    StringBuilder line = new StringBuilder();
    for (String next : message.strip().lines().map(String::strip).toList()) {
      line.append(line.isEmpty() ? "" : " ").append(next);
      if (!next.endsWith(":")) {
        break;
      }
    }
    return line.toString();
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "notice");
    thread.setDaemon(true);
    return thread;
  }

  /** A reason, and what would mend it where it is that a file is not there. */
  private static String reason(TemplateException e) {
    String reason = firstLine(e.getMessageWithoutStackTop());
    return e.getCause() instanceof TemplateNotFoundException
        ? reason + " It must stand in the folder of the template."
        : reason;
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(Templates.VERSION);
    configuration.setObjectWrapper(new SimpleObjectWrapper(Templates.VERSION));
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setLocalizedLookup(false);
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setNumberFormat("computer");
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    // What a template recovers from is its own affair: no line of it on standard error.
    configuration.setAttemptExceptionReporter((failure, environment) -> {});
    configuration.setWrapUncheckedExceptions(true);
    return configuration;
  }

  /** A writer that refuses to grow without end. */
  private static final class Bounded extends Writer {
    private final StringWriter out = new StringWriter();

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
      if (out.getBuffer().length() + count > MOST_OUTPUT) {
        throw new IOException("writes more than " + MOST_OUTPUT + " letters; shorten the template");
      }
      out.write(letters, from, count);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}

    @Override
    public String toString() {
      return out.toString();
    }
  }

  /** Loads files of one folder, none too long, none that turns text into a program. */
  private static final class Checked implements TemplateLoader {
    private final FileTemplateLoader files;
    private final Configuration configuration;

    Checked(FileTemplateLoader files, Configuration configuration) {
      this.files = files;
      this.configuration = configuration;
    }

    @Override
    public @org.jspecify.annotations.Nullable Object findTemplateSource(String name)
        throws IOException {
      try {
        return files.findTemplateSource(name);
      } catch (SecurityException e) {
        throw new IOException(name + ": stands outside the template's folder", e);
      }
    }

    @Override
    public long getLastModified(Object source) {
      return files.getLastModified(source);
    }

    @Override
    public Reader getReader(Object source, String encoding) throws IOException {
      StringBuilder text = new StringBuilder();
      try (Reader in = files.getReader(source, StandardCharsets.UTF_8.name())) {
        char[] buffer = new char[8192];
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
          text.append(buffer, 0, n);
          if (text.length() > MOST_SOURCE) {
            throw new IOException("has more than " + MOST_SOURCE + " letters; shorten it");
          }
        }
      }
      String name = String.valueOf(source);
      StringWriter plain = new StringWriter();
      // What the parser made of it, so that no comment hides a name in two halves.
      Template read;
      try {
        read =
            new Template(name.substring(name.lastIndexOf('/') + 1), text.toString(), configuration);
      } catch (IllegalArgumentException e) {
        throw new IOException(OTHER_FORMAT, e);
      }
      if (read.getOutputFormat() != HTMLOutputFormat.INSTANCE) {
        throw new IOException(OTHER_FORMAT);
      }
      read.dump(plain);
      if (FORMATS.matcher(plain.toString()).find()) {
        throw new IOException(OTHER_FORMAT);
      }
      if (CLOCK.matcher(plain.toString()).find()) {
        throw new IOException(
            "asks for .now, the clock; use asOf or replyBy, so that a run writes the same again");
      }
      Matcher refused = REFUSED.matcher(plain.toString());
      if (refused.find()) {
        throw new IOException(
            "uses ?" + refused.group(1) + ", which a notice may not; write it without");
      }
      return new StringReader(text.toString());
    }

    @Override
    public void closeTemplateSource(Object source) {
      // Nothing is held open.
    }
  }
}
