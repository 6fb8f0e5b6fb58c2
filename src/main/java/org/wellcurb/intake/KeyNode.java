package org.wellcurb.intake;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** The names that a JSON record may have, as the keys of the catalogue nest by their dots. */
final class KeyNode {
  /** What stands under a name. */
  enum Holds {
    NAMES,
    ENTRY,
    LAYERS,
    SETBACKS
  }

  final int id;
  final Holds holds;

  /** The entry, where it holds one. */
  final @Nullable Entry entry;

  private final Map<String, KeyNode> children = new HashMap<>();

  private KeyNode(int id, Holds holds, @Nullable Entry entry) {
    this.id = id;
    this.holds = holds;
    this.entry = entry;
  }

  @Nullable KeyNode child(String name) {
    return children.get(name);
  }

  /** The tree over all entries; every node has a number of its own, the root 0. */
  static KeyNode tree(Catalogue catalogue) {
    KeyNode root = new KeyNode(0, Holds.NAMES, null);
    int[] count = {1};
    root.children.put("setbacks", new KeyNode(count[0]++, Holds.SETBACKS, null));
    for (Entry entry : catalogue.entries()) {
      KeyNode at = root;
      String[] names = entry.key().split("\\.");
      for (int i = 0; i < names.length - 1; i++) {
        at = at.children.computeIfAbsent(names[i], n -> new KeyNode(count[0]++, Holds.NAMES, null));
      }
      Holds holds = entry.key().equals("layers") ? Holds.LAYERS : Holds.ENTRY;
      at.children.put(names[names.length - 1], new KeyNode(count[0]++, holds, entry));
    }
    return root;
  }

  /** One more than the greatest number in the tree. */
  int size() {
    int size = id + 1;
    for (KeyNode child : children.values()) {
      size = Math.max(size, child.size());
    }
    return size;
  }
}
