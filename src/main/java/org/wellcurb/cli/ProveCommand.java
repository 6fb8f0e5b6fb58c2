package org.wellcurb.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Loads packs, runs every example, and says what is not proved. */
@Command(
    name = "prove",
    mixinStandardHelpOptions = true,
    description = "Loads packs, runs every example, and says what is not proved.")
final class ProveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "PACK",
      description = "Rule packs: folders, files, or names of packs that ship.")
  private List<String> packs = new ArrayList<>();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    int code = ExitCode.DONE;
    for (String pack : packs) {
      try {
        Proof proof = Proof.of(PackLoader.loadForAuthor(pack));
        out.println(proof.summary());
        proof.statements().forEach(statement -> out.println("  " + statement.sentence()));
        code = proof.isClean() ? code : ExitCode.GATE;
      } catch (PackException e) {
        spec.commandLine().getErr().println(e.shown());
        code = ExitCode.UNUSABLE;
      }
    }
    return code;
  }
}
