package org.wellcurb.cli;

import java.io.PrintWriter;
import org.wellcurb.batch.RunFailure;
import org.wellcurb.rulepack.PackException;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** Says in one line why a command failed. */
final class Failures {
  private Failures() {}

  static int report(Exception failure, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    int code = ExitCode.UNUSABLE;
    if (failure instanceof RunFailure run) {
      run.line().lines().forEach(err::println);
      code = run.kind() == RunFailure.Kind.NO_INPUT ? ExitCode.NO_INPUT : ExitCode.UNUSABLE;
    } else if (failure instanceof PackException pack) {
      pack.shown().lines().forEach(err::println);
    } else {
      err.println(unexpected(failure));
    }
    if (isTracing(command)) {
      failure.printStackTrace(err);
    }
    err.flush();
    return code;
  }

  /** What nobody foresaw, in one line. */
  static String unexpected(Throwable failure) {
    return "unexpected: "
        + oneLine(failure.toString())
        + "; this is a fault of the program or of the machine, nothing was written (--trace shows"
        + " where)";
  }

  /** Line ends and other control characters become spaces. */
  static String oneLine(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().map(c -> Character.isISOControl(c) ? ' ' : c).forEach(out::appendCodePoint);
    return out.toString().strip();
  }

  private static boolean isTracing(CommandLine command) {
    for (CommandLine c = command; c != null; c = c.getParent()) {
      if (c.getCommand() instanceof Root root) {
        return root.isTracing();
      }
    }
    return false;
  }
}
