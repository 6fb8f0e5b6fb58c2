package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the arguments of a run name: files as given, folders by code point order of the path below
 * them, members of archives in the same order.
 *
 * @param inputs what is to be read, in order
 * @param passedOver what was met and is not read, with the reason
 */
public record Inputs(List<Input> inputs, List<PassedOver> passedOver) {

  /** Order by code point, whatever the locale. */
  public static final Comparator<String> CODE_POINTS =
      Comparator.comparing(s -> s.getBytes(StandardCharsets.UTF_8), Arrays::compareUnsigned);

  public Inputs {
    inputs = List.copyOf(inputs);
    passedOver = List.copyOf(passedOver);
  }

  /**
   * Looks at the arguments; nothing is read yet.
   *
   * @param arguments paths, or {@code -} for standard input
   * @param standardInput what {@code -} reads
   * @throws IntakeException if an argument is not there or cannot be read
   */
  public static Inputs of(List<String> arguments, InputStream standardInput) throws IOException {
    Search search = new Search(standardInput);
    for (String argument : arguments) {
      search.argument(argument);
    }
    return new Inputs(search.inputs, search.passedOver);
  }

  private static final class Search {
    final InputStream standardInput;
    final List<Input> inputs = new ArrayList<>();
    final List<PassedOver> passedOver = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private final Set<Path> seen = new HashSet<>();

    Search(InputStream standardInput) {
      this.standardInput = standardInput;
    }

    void argument(String argument) throws IOException {
      if (argument.equals("-")) {
        if (names.add("-")) {
          inputs.add(new Input("-", null, null, () -> standardInput));
        }
        return;
      }
      Path path = path(argument);
      if (Files.isDirectory(path)) {
        folder(path);
      } else if (Files.isRegularFile(path)) {
        file(path, path.getFileName().toString());
      } else if (Files.exists(path)) {
        throw new IntakeException(argument + ": is neither a file nor a folder");
      } else {
        throw new IntakeException(argument + ": is not there; check the path");
      }
    }

    private static Path path(String argument) throws IntakeException {
      try {
        return Path.of(argument);
      } catch (InvalidPathException e) {
        throw new IntakeException(argument + ": is not a path (" + e.getReason() + ")", e);
      }
    }

    private void folder(Path folder) throws IOException {
      List<Path> found = new ArrayList<>();
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(p -> !p.equals(folder)).forEach(found::add);
      } catch (UncheckedIOException e) {
        throw unlisted(folder, Objects.requireNonNull(e.getCause()));
      } catch (FileSystemException e) {
        throw unlisted(folder, e);
      }
      found.sort(Comparator.comparing(p -> relative(folder, p), CODE_POINTS));
      for (Path path : found) {
        String name = relative(folder, path);
        if (Files.isSymbolicLink(path)) {
          passedOver.add(new PassedOver(name, "links are not followed"));
        } else if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
          if (Form.of(name) == null) {
            passedOver.add(new PassedOver(name, "its name ends as no records do"));
          } else {
            file(path, name);
          }
        }
      }
    }

    private static IntakeException unlisted(Path folder, IOException e) {
      String at = folder.toString();
      String why = "may not be read";
      if (e instanceof FileSystemException failure) {
        at = failure.getFile() == null ? at : failure.getFile();
        why = failure.getReason() == null ? why : failure.getReason();
      }
      return new IntakeException(
          at + ": cannot be listed (" + why + "); check its permissions, or take it out", e);
    }

    private static String relative(Path folder, Path path) {
      return folder.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
    }

    private void file(Path path, String name) throws IOException {
      String unique = unique(name);
      if (!seen.add(path.toRealPath())) {
        passedOver.add(new PassedOver(unique, "is given twice"));
        return;
      }
      if (!Files.isReadable(path)) {
        throw new IntakeException(path + ": may not be read; check its permissions");
      }
      Form form = Form.of(name);
      if (form == Form.SHEETS) {
        Workbooks.sheets(Workbooks.of(path), path, unique, inputs, passedOver);
      } else if (form == Form.ARCHIVE) {
        Archive.members(path, unique, inputs, passedOver);
      } else if (form == Form.PACKED) {
        inputs.add(new Input(unique, path, Form.ofPacked(name), () -> Archive.unpack(path)));
      } else {
        inputs.add(new Input(unique, path, form, () -> Files.newInputStream(path)));
      }
    }

    /** Two arguments may hold files of one name; each keeps a name of its own. */
    private String unique(String name) {
      String unique = name;
      for (int i = 2; !names.add(unique); i++) {
        unique = i + "/" + name;
      }
      return unique;
    }
  }
}
