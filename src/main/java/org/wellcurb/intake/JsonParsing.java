package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Extra;

/**
 * Takes a JSON object apart: values by entry, layers, setbacks, and what no entry names. It refuses
 * what the schema of a record refuses, and duplicate names.
 */
final class JsonParsing {
  /**
   * One layer as written; texts, empty where not given.
   *
   * @param from top
   * @param to bottom
   * @param material what was met
   */
  record RawLayer(String from, String to, String material) {}

  /**
   * One setback as written.
   *
   * @param from key of what it is measured from, without {@code setback.}
   * @param distance as written
   */
  record RawSetback(String from, String distance) {}

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          // What comes here is UTF-8; a zero byte is a fault of it and no sign of UTF-32.
          .disable(JsonFactory.Feature.CHARSET_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(Bounds.DEPTH)
                  .maxStringLength(Bounds.CELL)
                  .maxNameLength(Bounds.CELL)
                  .maxTokenCount(Bounds.JSON_VALUES)
                  .build())
          .build();

  static final String TWICE = "stands twice";

  private final KeyNode root;
  private final BitSet seen;
  private final Set<String> seenUnknown = new HashSet<>();
  final JsonCells cells;
  final List<RawLayer> layers = new ArrayList<>();
  final List<RawSetback> setbacks = new ArrayList<>();
  final List<Extra> extras = new ArrayList<>();

  private byte[] bytes = new byte[0];
  private int base;

  JsonParsing(Catalogue catalogue) {
    root = KeyNode.tree(catalogue);
    seen = new BitSet(root.size());
    cells = new JsonCells(catalogue.size());
  }

  /** Takes apart the object that stands in {@code bytes[from, to)}. */
  void read(byte[] source, int from, int to) throws RecordFault {
    cells.clear();
    seen.clear();
    seenUnknown.clear();
    layers.clear();
    setbacks.clear();
    extras.clear();
    bytes = source;
    base = from;
    try (JsonParser parser = FACTORY.createParser(source, from, to - from)) {
      try {
        parser.nextToken();
        object(parser, root, "");
        if (parser.nextToken() != null) {
          throw new RecordFault("", "text follows the object");
        }
      } catch (StreamConstraintsException e) {
        throw new RecordFault(pointer(parser), "goes beyond a bound: " + e.getOriginalMessage());
      } catch (JsonProcessingException e) {
        throw new RecordFault(pointer(parser), notJson(e.getLocation()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where reading stopped, counted in letters from the record's first, and what would mend it. */
  private String notJson(@Nullable JsonLocation at) {
    String where = "";
    if (at != null && at.getByteOffset() >= 0) {
      int stop = Math.min(bytes.length, base + (int) at.getByteOffset());
      String before = new String(bytes, base, stop - base, StandardCharsets.UTF_8);
      long line = 1 + before.chars().filter(c -> c == '\n').count();
      String last = before.substring(before.lastIndexOf('\n') + 1);
      where =
          " at line " + line + ", column " + (1 + last.codePointCount(0, last.length())) + " of it";
    }
    return "is not JSON" + where + "; look at the quotes, commas and brackets there";
  }

  private void object(JsonParser parser, KeyNode node, String path)
      throws IOException, RecordFault {
    KeyNode before = node;
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      KeyNode child = node.child(name, before);
      if (child == null) {
        unknown(parser, path.isEmpty() ? name : path + "." + name);
        continue;
      }
      if (seen.get(child.id)) {
        throw new RecordFault(pointer(parser), TWICE);
      }
      seen.set(child.id);
      before = child;
      JsonToken token = parser.nextToken();
      switch (child.holds) {
        case NAMES -> {
          if (token == JsonToken.VALUE_NULL && !name.equals("record")) {
            continue;
          }
          if (token != JsonToken.START_OBJECT) {
            throw JsonLists.wrong(parser, "an object");
          }
          object(parser, child, name);
        }
        case ENTRY -> value(parser, token, Objects.requireNonNull(child.entry));
        case LAYERS -> JsonLists.layers(parser, this);
        case SETBACKS -> JsonLists.setbacks(parser, this);
      }
    }
  }

  private void value(JsonParser parser, JsonToken token, Entry entry)
      throws IOException, RecordFault {
    if (token == JsonToken.VALUE_NULL) {
      return;
    }
    if (token == JsonToken.START_ARRAY && entry.key().equals("record.variances")) {
      cells.put(entry.index(), JsonLists.texts(parser));
      return;
    }
    if (!JsonTypes.allows(entry.kind(), token)) {
      throw JsonLists.wrong(parser, JsonTypes.label(entry.kind()));
    }
    // The parser's own bound is held only where a text outgrows its buffer.
    if (parser.getTextLength() > Bounds.CELL) {
      throw new RecordFault(pointer(parser), "is longer than " + Bounds.CELL + " characters");
    }
    cells.put(entry.index(), parser, bytes, base);
  }

  private void unknown(JsonParser parser, String path) throws IOException, RecordFault {
    if (!seenUnknown.add(path)) {
      throw new RecordFault(pointer(parser), TWICE);
    }
    JsonToken token = parser.nextToken();
    if (token.isScalarValue()) {
      if (token != JsonToken.VALUE_NULL) {
        extras.add(new Extra(path, parser.getText()));
      }
      return;
    }
    int start = base + (int) parser.currentTokenLocation().getByteOffset();
    JsonLists.skip(parser);
    int stop = base + (int) parser.currentLocation().getByteOffset();
    extras.add(new Extra(path, new String(bytes, start, stop - start, StandardCharsets.UTF_8)));
  }

  static String pointer(JsonParser parser) {
    return parser.getParsingContext().pathAsPointer().toString();
  }
}
