package org.wellcurb.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.wellcurb.batch.RunFailure;
import org.wellcurb.desk.Desk;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A page on this machine for one record. */
@Command(
    name = "desk",
    mixinStandardHelpOptions = true,
    description = "Opens a page on this machine for one record; end it with Ctrl-C.")
final class DeskCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "Port on 127.0.0.1 (default: one that is free).")
  private int port;

  @Option(
      names = "--rules",
      paramLabel = "PACK",
      description =
          "A rule pack: a folder, a file, or the name of one that ships (default:"
              + " common-practice). May be given again.")
  private List<String> packs = new ArrayList<>();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      converter = DateOption.class,
      description = "The day that counts as today (YYYY-MM-DD); today in UTC if not given.")
  private LocalDate asOf = LocalDate.now(Clock.systemUTC());

  @Mixin private final StyleOptions style = new StyleOptions();

  @Override
  public Integer call() throws Exception {
    List<Pack> loaded = new ArrayList<>();
    for (String pack : packs.isEmpty() ? List.of("common-practice") : packs) {
      loaded.add(PackLoader.load(pack));
    }
    PrintWriter out = spec.commandLine().getOut();
    CountDownLatch ended = new CountDownLatch(1);
    Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown));
    try (Desk desk = open(loaded)) {
      out.println("the desk is open at " + desk.address() + " (this machine only; Ctrl-C ends it)");
      out.flush();
      ended.await();
    }
    return ExitCode.DONE;
  }

  private Desk open(List<Pack> loaded) throws RunFailure {
    try {
      return Desk.open(port, loaded, asOf, style.style());
    } catch (IOException | IllegalArgumentException e) {
      throw RunFailure.unusable(
          "--port "
              + port
              + ": cannot be had ("
              + e.getMessage()
              + "); name another, or leave it out",
          e);
    }
  }
}
