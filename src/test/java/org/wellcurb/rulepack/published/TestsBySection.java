package org.wellcurb.rulepack.published;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Runs the tests of the codes, section by section, to learn which facts they hold rules to. */
final class TestsBySection {
  private static final Path FOLDER = Path.of("src/test/java/org/wellcurb/rulepack/published");

  private TestsBySection() {}

  static void run() throws ReflectiveOperationException, IOException {
    List<String> names;
    try (Stream<Path> files = Files.list(FOLDER)) {
      names = files.map(f -> f.getFileName().toString()).filter(TestsBySection::isTest).toList();
    }
    for (String name : names.stream().sorted().toList()) {
      Class<?> type = Class.forName(TestsBySection.class.getPackageName() + "." + plain(name));
      Constructor<?> constructor = type.getDeclaredConstructor();
      constructor.setAccessible(true);
      Object test = constructor.newInstance();
      for (Method method : type.getDeclaredMethods()) {
        if (method.isAnnotationPresent(Test.class)) {
          method.setAccessible(true);
          method.invoke(test);
        }
      }
    }
  }

  private static boolean isTest(String file) {
    return file.endsWith("Test.java")
        && !file.equals("LeftOutTest.java")
        && !file.equals("PublishedTableTest.java");
  }

  private static String plain(String file) {
    return file.substring(0, file.length() - ".java".length());
  }
}
