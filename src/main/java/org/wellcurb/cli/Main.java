package org.wellcurb.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.wellcurb.batch.Stop;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The command line: reads the options, asks the rooms, prints what came of it. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    // Nothing that is written may hang on the machine's own language.
    Locale.setDefault(Locale.ROOT);
    PrintStream err = stream(FileDescriptor.err);
    Stop stop =
        new Stop(
            line -> {
              err.println(line);
              err.flush();
            });
    Runtime.getRuntime().addShutdownHook(new Thread(stop::askAndWait, "stopping"));
    int code = run(arguments, stream(FileDescriptor.out), err, stop);
    stop.ended();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @return 0 done, 1 a gate was tripped, 2 something given was not usable, 3 no input could be
   *     read
   */
  public static int run(String[] arguments, PrintStream out, PrintStream err) {
    return run(arguments, out, err, new Stop());
  }

  private static int run(String[] arguments, PrintStream out, PrintStream err, Stop stop) {
    CommandLine line = new CommandLine(new Root());
    Map<String, Supplier<Object>> commands = commands(stop);
    // To read what a command takes is slow: only the one that is asked for is made, if it is known.
    String asked = arguments.length > 0 ? arguments[0] : "";
    if (commands.containsKey(asked)) {
      commands.keySet().retainAll(List.of(asked));
    }
    commands.forEach((name, command) -> line.addSubcommand(name, command.get()));
    line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setCaseInsensitiveEnumValuesAllowed(false);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setParameterExceptionHandler(Main::misused);
    line.setExecutionExceptionHandler(Failures::report);
    int code = execute(line, arguments, err);
    // These hold back what did not end with a line's end, until somebody asks.
    line.getOut().flush();
    line.getErr().flush();
    out.flush();
    err.flush();
    return code;
  }

  /** Not even a fault of the machine shows a stack trace to who did not ask for it. */
  private static int execute(CommandLine line, String[] arguments, PrintStream err) {
    try {
      return line.execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError e) {
      err.println(
          "not enough memory: " + Failures.oneLine(e.toString()) + "; give Java more (-Xmx, -Xss)");
      return ExitCode.UNUSABLE;
    } catch (Error e) {
      // A class that cannot be loaded, say, where the machine opens no more files.
      err.println(Failures.unexpected(e));
      if (line.getCommand() instanceof Root root && root.isTracing()) {
        e.printStackTrace(err);
      }
      return ExitCode.UNUSABLE;
    }
  }

  private static Map<String, Supplier<Object>> commands(Stop stop) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("screen", () -> new ScreenCommand(stop));
    commands.put("rehearse", () -> new RehearseCommand(stop));
    commands.put("headers", HeadersCommand::new);
    commands.put("rulebook", RulebookCommand::new);
    commands.put("prove", ProveCommand::new);
    commands.put("blank", BlankCommand::new);
    commands.put("desk", DeskCommand::new);
    return commands;
  }

  /** A command line that cannot be read is said in one line. */
  private static int misused(ParameterException e, String[] arguments) {
    CommandLine command = e.getCommandLine();
    String message = e.getMessage();
    command
        .getErr()
        .println(
            Failures.oneLine(message == null ? "the command line cannot be read" : message)
                + "; see "
                + command.getCommandSpec().qualifiedName()
                + " --help");
    return ExitCode.UNUSABLE;
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
