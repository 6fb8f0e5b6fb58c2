package org.wellcurb.record;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Words with a meaning each, found without case (of ASCII letters) and without allocation. */
final class WordTable {
  /** No such word. */
  static final int NONE = -1;

  private final byte[][] slots;
  private final int[] meanings;
  private final int longest;

  private WordTable(List<String> words, List<Integer> meanings) {
    int size = Integer.highestOneBit(Math.max(4, words.size() * 4));
    slots = new byte[size][];
    this.meanings = new int[size];
    int most = 0;
    for (int i = 0; i < words.size(); i++) {
      byte[] word = words.get(i).toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
      put(word, meanings.get(i));
      most = Math.max(most, word.length);
    }
    longest = most;
  }

  /** A table of words; of a word that stands twice the first meaning counts. */
  static WordTable of(List<String> words, List<Integer> meanings) {
    return new WordTable(words, meanings);
  }

  private void put(byte[] word, int meaning) {
    int at = hash(word, 0, word.length) & (slots.length - 1);
    while (slots[at] != null) {
      if (same(slots[at], word, 0, word.length)) {
        return;
      }
      at = (at + 1) & (slots.length - 1);
    }
    slots[at] = word;
    meanings[at] = meaning;
  }

  /** The meaning of {@code source[from, to)}; {@link #NONE} if it is not one of the words. */
  int find(byte[] source, int from, int to) {
    if (to - from > longest) {
      return NONE;
    }
    int at = hash(source, from, to) & (slots.length - 1);
    while (slots[at] != null) {
      if (same(slots[at], source, from, to)) {
        return meanings[at];
      }
      at = (at + 1) & (slots.length - 1);
    }
    return NONE;
  }

  /** The meaning of the text; {@link #NONE} if it is not one of the words. */
  int find(String text) {
    if (text.length() > longest) {
      return NONE;
    }
    byte[] bytes = text.toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
    return find(bytes, 0, bytes.length);
  }

  private static int hash(byte[] source, int from, int to) {
    int hash = 0;
    for (int i = from; i < to; i++) {
      hash = hash * 31 + fold(source[i]);
    }
    return hash ^ (hash >>> 15);
  }

  private static boolean same(byte[] word, byte[] source, int from, int to) {
    if (word.length != to - from) {
      return false;
    }
    for (int i = 0; i < word.length; i++) {
      if (word[i] != fold(source[from + i])) {
        return false;
      }
    }
    return true;
  }

  private static int fold(byte b) {
    return b >= 'A' && b <= 'Z' ? b + 32 : b;
  }
}
