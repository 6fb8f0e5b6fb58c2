package org.wellcurb.judgement;

import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Iterator;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** A set of entries in the order in which they were added, to be emptied and filled again. */
final class NeededEntries extends AbstractSet<Entry> {
  private final Entry[] entries;

  /** By entry: the fill in which it was added last. */
  private final long[] addedIn;

  private long fill = 1;
  private int size;

  NeededEntries(Catalogue catalogue) {
    entries = new Entry[catalogue.size()];
    addedIn = new long[catalogue.size()];
  }

  @Override
  public boolean add(Entry entry) {
    int index = entry.index();
    if (addedIn[index] == fill) {
      return false;
    }
    addedIn[index] = fill;
    entries[size++] = entry;
    return true;
  }

  @Override
  public void clear() {
    fill++;
    size = 0;
  }

  @Override
  public Iterator<Entry> iterator() {
    return Arrays.asList(entries).subList(0, size).iterator();
  }

  @Override
  public Object[] toArray() {
    return Arrays.copyOf(entries, size, Object[].class);
  }

  @Override
  public int size() {
    return size;
  }
}
