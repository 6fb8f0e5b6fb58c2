package org.wellcurb.rulepack;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds packs: in a folder, as a file, or among those that ship. */
final class PackFinder {
  /** What the file of a pack is called in its folder. */
  static final String FILE = "pack.json";

  /** Where the packs that ship are on the class path. */
  private static final String SHIPPED = "/rules/";

  private PackFinder() {}

  /**
   * A pack that is there.
   *
   * @param shown how messages name its file
   * @param path the file; null for a pack that ships
   * @param name name of a pack that ships; of others the name of the folder
   */
  record Found(String shown, @Nullable Path path, String name) {

    /** The same for the same file, however it was named. */
    String identity() {
      return path == null ? "ships " + name : path.toAbsolutePath().normalize().toString();
    }

    /** A file beside the pack's own; null where there is none. */
    @Nullable InputStream beside(String file) throws IOException {
      if (path == null) {
        return PackFinder.class.getResourceAsStream(SHIPPED + name + "/" + file);
      }
      Path other = path.resolveSibling(file);
      return Files.exists(other) ? Files.newInputStream(other) : null;
    }

    InputStream open() throws IOException {
      if (path != null) {
        return Files.newInputStream(path);
      }
      InputStream in = PackFinder.class.getResourceAsStream(SHIPPED + name + "/" + FILE);
      if (in == null) {
        throw new IOException("it is gone");
      }
      return in;
    }
  }

  /**
   * The pack that a person names: a folder, a file, or the name of one that ships.
   *
   * @return null if there is none
   */
  static @Nullable Found find(String what) {
    Path path;
    try {
      path = Path.of(what);
    } catch (InvalidPathException e) {
      return null;
    }
    if (Files.isDirectory(path) && Files.exists(path.resolve(FILE))) {
      return file(path.resolve(FILE));
    }
    if (Files.exists(path) && !Files.isDirectory(path)) {
      return file(path);
    }
    return shipped(what);
  }

  /** The pack of this name beside the folder of another, else among those that ship. */
  static @Nullable Found beside(Found other, String name) {
    if (other.path != null) {
      Path folder = other.path.toAbsolutePath().normalize().getParent();
      Path all = folder == null ? null : folder.getParent();
      if (all != null && Files.exists(all.resolve(name).resolve(FILE))) {
        Path shown = other.path.normalize().getParent();
        // A relative name stays relative where it can, so that messages read as the person wrote.
        Path sibling =
            shown == null || shown.toString().isEmpty() || shown.endsWith("..")
                ? all.resolve(name)
                : shown.resolveSibling(name);
        return file(sibling.resolve(FILE));
      }
    }
    return shipped(name);
  }

  private static Found file(Path path) {
    Path folder = path.toAbsolutePath().normalize().getParent();
    Path name = folder == null ? null : folder.getFileName();
    return new Found(path.toString().replace('\\', '/'), path, name == null ? "" : name.toString());
  }

  private static @Nullable Found shipped(String name) {
    if (!Shapes.isName(name)) {
      return null;
    }
    URL url = PackFinder.class.getResource(SHIPPED + name + "/" + FILE);
    return url == null ? null : new Found("rules/" + name + "/" + FILE + " (ships)", null, name);
  }

  /** Names of the packs that ship, in order. */
  static List<String> shippedNames() {
    URL anchor = PackFinder.class.getResource(SHIPPED + "schema/rule-pack.schema.json");
    if (anchor == null) {
      return List.of();
    }
    try {
      URI uri = anchor.toURI();
      if (!"jar".equals(uri.getScheme())) {
        Path schema = Path.of(uri).getParent();
        return schema == null || schema.getParent() == null ? List.of() : names(schema.getParent());
      }
      try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
        return names(jar.getPath(SHIPPED));
      }
    } catch (IOException | URISyntaxException e) {
      return List.of();
    }
  }

  /** Names of the packs that stand in this folder. */
  static List<String> names(Path folder) throws IOException {
    TreeSet<String> names = new TreeSet<>();
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path each : inside.toList()) {
        Path name = each.getFileName();
        if (name != null && Files.exists(each.resolve(FILE))) {
          names.add(name.toString().replace("/", ""));
        }
      }
    }
    return List.copyOf(names);
  }

  /** Names of the packs that one may be built on. */
  static Set<String> namesBeside(Found other) {
    Set<String> names = new TreeSet<>(shippedNames());
    Path folder = other.path == null ? null : other.path.toAbsolutePath().normalize().getParent();
    if (folder != null && folder.getParent() != null) {
      try {
        names.addAll(names(folder.getParent()));
      } catch (IOException e) {
        return names;
      }
    }
    return names;
  }
}
