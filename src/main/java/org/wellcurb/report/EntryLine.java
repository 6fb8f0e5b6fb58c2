package org.wellcurb.report;

import java.util.List;

/**
 * One entry of a record, as written and as read.
 *
 * @param label what pages call it
 * @param key its key
 * @param written what stands on the form
 * @param read what it was read as; empty where it could not be read
 * @param notes what is to be said of it, whole sentences
 */
public record EntryLine(String label, String key, String written, String read, List<String> notes) {
  public EntryLine {
    notes = List.copyOf(notes);
  }
}
