package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.quantity.Note;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Layer;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Group;
import org.wellcurb.report.words.Words;

/** The entries of a record as written and as read, in the groups of the form. */
final class EntryTables {
  private final WellRecord record;
  private final Words words;
  private final Amounts amounts;

  EntryTables(WellRecord record, PageStyle style) {
    this.record = record;
    words = Words.in(style.language());
    amounts = new Amounts(words, style.units());
  }

  List<EntryTable> all() {
    List<EntryTable> tables = new ArrayList<>();
    for (Group group : Group.values()) {
      List<EntryLine> lines = new ArrayList<>();
      List<String> blank = new ArrayList<>();
      for (Entry entry : record.catalogue().entries()) {
        if (Group.of(entry.key()) == group) {
          add(entry, lines, blank);
        }
      }
      boolean open = lines.stream().anyMatch(line -> !line.notes().isEmpty());
      tables.add(new EntryTable(group.heading(), open, lines, blank));
    }
    return tables;
  }

  private void add(Entry entry, List<EntryLine> lines, List<String> blank) {
    String label = words.entry(entry.key());
    String written = record.written(entry.index());
    if (entry.key().equals("layers")) {
      layers(label, lines, blank);
    } else if (written.isEmpty() && record.state(entry.index()) == WellRecord.UNKNOWN) {
      blank.add(label);
    } else {
      String read = amounts.read(record, entry);
      lines.add(new EntryLine(label, entry.key(), written, read, notes(entry)));
    }
  }

  private void layers(String label, List<EntryLine> lines, List<String> blank) {
    if (record.layers().isEmpty()) {
      blank.add(label);
      return;
    }
    Entry depth = record.catalogue().entry(record.catalogue().index("well.depth"));
    for (Layer layer : record.layers()) {
      String read =
          words.say(
              "amount.range",
              amounts.range(layer.from(), depth, depth.unit(amounts.system(record))),
              amounts.range(layer.to(), depth, depth.unit(amounts.system(record))));
      boolean unread = !layer.depths().isEmpty();
      String written = unread ? layer.depths() + ": " + layer.material() : layer.material();
      List<String> notes = new ArrayList<>();
      if (layer.note() != Note.NONE) {
        notes.add(words.say("note." + layer.note().name().toLowerCase(Locale.ROOT)));
      }
      if (unread) {
        notes.add(words.say("read.unreadable"));
      }
      lines.add(new EntryLine(label, "layers", written, read, notes));
    }
  }

  private List<String> notes(Entry entry) {
    List<String> notes = new ArrayList<>();
    int i = entry.index();
    Note note = record.note(i);
    if (note != Note.NONE) {
      notes.add(words.say("note." + note.name().toLowerCase(Locale.ROOT)));
    }
    if (record.state(i) == WellRecord.UNREADABLE) {
      notes.add(words.say("read.unreadable"));
    } else if (record.state(i) == WellRecord.UNKNOWN && note == Note.NONE) {
      notes.add(words.say("read.unknown"));
    }
    if (WriteAgain.isAsked(record, i)) {
      String how = WriteAgain.how(words, entry, note, record.written(i));
      if (!how.isEmpty()) {
        notes.add(how);
      }
    }
    if (record.isFarOff(entry)) {
      String range = amounts.range(entry.plausible(), entry, record.unit(i));
      notes.add(words.say("read.far", range));
    }
    return notes;
  }
}
