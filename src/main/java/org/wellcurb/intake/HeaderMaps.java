package org.wellcurb.intake;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.wellcurb.record.Catalogue;

/** Reads header maps. */
public final class HeaderMaps {
  private static final int MOST = 4 << 20;

  private HeaderMaps() {}

  /**
   * Reads a map.
   *
   * @param file how messages name it
   * @throws MapException with everything that is wrong, if anything is
   */
  public static HeaderMap load(Path path, String file, Catalogue catalogue) throws MapException {
    String text;
    try {
      if (Files.size(path) > MOST) {
        throw refuse(file, "the file is larger than " + MOST + " bytes", "");
      }
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
              .toString();
    } catch (CharacterCodingException e) {
      throw refuse(file, "the file is not UTF-8", "save it as UTF-8");
    } catch (IOException e) {
      throw refuse(file, "the file cannot be read", "look whether it is a file you may read");
    }
    return parse(file, text.startsWith("\uFEFF") ? text.substring(1) : text, catalogue);
  }

  /** Reads a map from its text. */
  public static HeaderMap parse(String file, String json, Catalogue catalogue) throws MapException {
    MapText text = new MapText(file, json);
    if (text.isSound()) {
      MapSchema.check(text);
    }
    if (text.isSound()) {
      HeaderMap map = new MapReader(text, catalogue).map();
      if (text.isSound()) {
        return map;
      }
    }
    throw new MapException(text.problems());
  }

  private static MapException refuse(String file, String what, String mend) {
    return new MapException(List.of(new MapProblem(file, "", 0, 0, what, mend)));
  }
}
