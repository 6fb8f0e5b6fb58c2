package org.wellcurb.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

/**
 * The templates of the pages, from the class path. Whatever they print is escaped as HTML; they
 * cannot make objects, nor reach past the values that they are given.
 */
final class Templates {
  static final Version VERSION = Configuration.VERSION_2_3_34;
  private static final Configuration CONFIGURATION = configuration();

  private Templates() {}

  /** The page that this template makes of these values. */
  static String fill(String template, Map<String, Object> values) {
    StringWriter out = new StringWriter();
    try {
      CONFIGURATION.getTemplate(template).process(values, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("template " + template + ": " + e.getMessage(), e);
    }
    return out.toString();
  }

  /** Reads a template, so that {@link #fill} finds it read. */
  static void read(String template) {
    try {
      CONFIGURATION.getTemplate(template);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(VERSION);
    configuration.setClassForTemplateLoading(Templates.class, "/org/wellcurb/report");
    DefaultObjectWrapperBuilder wrapper = new DefaultObjectWrapperBuilder(VERSION);
    wrapper.setIterableSupport(true);
    configuration.setObjectWrapper(wrapper.build());
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setOutputEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setLocalizedLookup(false);
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setNumberFormat("computer");
    configuration.setBooleanFormat("c");
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    return configuration;
  }
}
