package org.wellcurb.rulepack;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the texts of a pack are in French: a file beside it, one object of texts by the pack's own
 * words. A text that it lacks is printed as the pack has it. It changes no outcome.
 */
final class FrenchTexts {
  static final String FILE = "texts.fr.json";

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();

  private FrenchTexts() {}

  /**
   * Those that stand beside a pack; none where there is no such file.
   *
   * @throws PackException where the file cannot be read, is too large or is no such object
   */
  static Map<String, String> beside(PackFinder.Found found) throws PackException {
    try (@Nullable InputStream in = found.beside(FILE)) {
      if (in == null) {
        return Map.of();
      }
      byte[] bytes = in.readNBytes(PackBytes.MOST + 1);
      if (bytes.length > PackBytes.MOST) {
        throw refuse(found, "is larger than " + (PackBytes.MOST >> 20) + " MiB");
      }
      return texts(found, JSON.readTree(bytes));
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      throw refuse(found, "is not JSON that can be read, from line " + line);
    } catch (IOException e) {
      throw refuse(found, "cannot be read");
    }
  }

  private static Map<String, String> texts(PackFinder.Found found, JsonNode root)
      throws PackException {
    if (!root.isObject()) {
      throw refuse(found, "is no object of texts");
    }
    Map<String, String> texts = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> each : root.properties()) {
      if (!each.getValue().isTextual() || each.getValue().textValue().isBlank()) {
        throw refuse(found, "has no text for \"" + each.getKey() + "\"");
      }
      texts.put(each.getKey(), each.getValue().textValue());
    }
    return texts;
  }

  private static PackException refuse(PackFinder.Found found, String what) {
    return new PackException(
        List.of(
            PackProblem.without(
                found.shown(),
                FILE + " beside it " + what,
                "mend it: one object, each text of the pack with its French")));
  }
}
