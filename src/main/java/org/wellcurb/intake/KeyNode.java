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

  /** The name, as the parser last gave it. */
  private String name = "";

  /** What stood first in the last object, and after this node: most objects have one order. */
  private @Nullable KeyNode first;

  private @Nullable KeyNode next;

  private final Map<String, KeyNode> children = new HashMap<>();

  private KeyNode(int id, Holds holds, @Nullable Entry entry) {
    this.id = id;
    this.holds = holds;
    this.entry = entry;
  }

  /**
   * What stands under this name; null if nothing may.
   *
   * @param before what the object held before it; this node itself at its beginning
   */
  @Nullable KeyNode child(String name, KeyNode before) {
    KeyNode guess = before == this ? first : before.next;
    // Names of one spelling are one object, as the parser makes them.
    if (guess != null && isSame(guess.name, name)) {
      return guess;
    }
    KeyNode child = children.get(name);
    if (child != null) {
      child.name = name;
      if (before == this) {
        first = child;
      } else {
        before.next = child;
      }
    }
    return child;
  }

  @SuppressWarnings("ReferenceEquality")
  private static boolean isSame(String one, String other) {
    return one == other;
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
