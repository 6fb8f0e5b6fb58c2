package org.wellcurb.rulepack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;

/**
 * A pack to start from: small, sound, of invented rules that show what a pack can say, with the
 * schema beside it, so that an editor helps wherever the folder is.
 */
public final class StartingPack {
  /** What stands after each text that its author has to write. */
  static final String OPEN = "(to be filled in)";

  private static final String SCHEMA = "rule-pack.schema.json";

  private StartingPack() {}

  /**
   * Writes a folder with a pack in it.
   *
   * @param parent folder that it is to be in
   * @param name what the pack and its folder are called: small letters, digits, single dashes
   * @return the file of the pack
   * @throws IllegalArgumentException if the name cannot be one
   * @throws IOException if the folder exists or cannot be written
   */
  public static Path write(Path parent, String name) throws IOException {
    String text = text(name);
    Path folder = Files.createDirectory(parent.resolve(name));
    Files.writeString(folder.resolve(SCHEMA), resource("/rules/schema/" + SCHEMA));
    return Files.writeString(folder.resolve(PackFinder.FILE), text);
  }

  /** The text of such a pack. */
  static String text(String name) {
    if (!Shapes.isName(name)) {
      throw new IllegalArgumentException(
          "'" + name + "' cannot name a pack; use small letters, digits and single dashes");
    }
    String title = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    return resource("starting-pack.json")
        .replace("TITLE", title.replace('-', ' '))
        .replace("NAME", name);
  }

  private static String resource(String name) {
    try (InputStream in = StartingPack.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
