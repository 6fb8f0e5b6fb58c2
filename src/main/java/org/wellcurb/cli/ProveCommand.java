package org.wellcurb.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Proof;
import org.wellcurb.rulepack.StartingPack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
      arity = "0..*",
      paramLabel = "PACK",
      description = "Rule packs: folders, files, or names of packs that ship.")
  private List<String> packs = new ArrayList<>();

  @Option(
      names = "--new",
      paramLabel = "NAME",
      description = "Write a pack to start from into the new folder NAME.")
  private @Nullable Path fresh;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (fresh == null && packs.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "no PACK is given; name one, or use --new");
    }
    if (fresh != null) {
      int code = start(fresh, out);
      if (code != ExitCode.DONE) {
        return code;
      }
    }
    int code = ExitCode.DONE;
    for (String pack : packs) {
      try {
        Proof proof = Proof.of(PackLoader.loadForAuthor(pack), PackLoader.folder(pack));
        boolean isNamed = packs.size() == 1 || pack.equals(proof.pack());
        out.println((isNamed ? "" : pack + ": ") + proof.summary());
        proof.statements().forEach(statement -> out.println("  " + statement.sentence()));
        code = proof.isClean() ? code : ExitCode.GATE;
      } catch (PackException e) {
        spec.commandLine().getErr().println(e.shown());
        code = ExitCode.UNUSABLE;
      }
    }
    return code;
  }

  private int start(Path folder, PrintWriter out) {
    Path name = folder.getFileName();
    Path parent = folder.toAbsolutePath().getParent();
    try {
      if (name == null || parent == null) {
        throw new IllegalArgumentException("'" + folder + "' cannot be a new folder");
      }
      StartingPack.write(parent, name.toString());
      out.println(folder.resolve("pack.json") + ": written; change it, then prove " + folder);
      return ExitCode.DONE;
    } catch (IllegalArgumentException e) {
      spec.commandLine().getErr().println("--new: " + e.getMessage());
    } catch (FileAlreadyExistsException e) {
      spec.commandLine().getErr().println("--new " + folder + ": it exists; choose another name");
    } catch (IOException e) {
      spec.commandLine()
          .getErr()
          .println("--new " + folder + ": it cannot be written; choose a folder that can");
    }
    return ExitCode.UNUSABLE;
  }
}
