package org.wellcurb.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whole processes, timed. */
final class Timed {
  private Timed() {}

  /** Seconds that a command takes from start to end; it must end well. */
  static double seconds(List<String> command, Map<String, String> environment)
      throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.environment().putAll(environment);
    long start = System.nanoTime();
    int code = builder.start().waitFor();
    double seconds = (System.nanoTime() - start) / 1e9;
    if (code != 0) {
      int classPath = command.indexOf("-cp");
      List<String> shown = command.subList(classPath < 0 ? 0 : classPath + 2, command.size());
      throw new IllegalStateException("... " + String.join(" ", shown) + " ended with " + code);
    }
    return seconds;
  }

  /** Seconds that a main class of this class path takes. */
  static double java(List<String> options, String... mainAndArguments)
      throws IOException, InterruptedException {
    return seconds(command(options, mainAndArguments), Map.of());
  }

  /** The last line that a main class of this class path writes. */
  static String lastLine(List<String> options, String... mainAndArguments)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command(options, mainAndArguments))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String all =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    if (process.waitFor() != 0) {
      throw new IllegalStateException(mainAndArguments[0] + " failed: " + all);
    }
    return all.substring(all.lastIndexOf('\n') + 1);
  }

  private static List<String> command(List<String> options, String... mainAndArguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:+UseSerialGC");
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(mainAndArguments));
    return command;
  }
}
