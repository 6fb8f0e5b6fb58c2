package org.wellcurb.intake;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import org.wellcurb.record.Catalogue;

/** A header map of any text is refused with its faults, or reads a table. */
class MapFuzz {
  private static final String TABLE = "NO;A;B;U\n1;2;x;ft\n2;3,5;y;m\n2;;;\n";

  @FuzzTest(maxDuration = "10m")
  void aMapIsRefusedOrReads(FuzzedDataProvider data) throws IOException {
    String before =
        data.pickValue(
            new String[] {
              "", "{\"title\":\"t\",\"columns\":[{\"column\":\"NO\",\"entry\":\"record.id\"}", "{"
            });
    String json = before + data.consumeRemainingAsString();
    HeaderMap map;
    try {
      map = HeaderMaps.parse("map.json", json, Catalogue.standard());
    } catch (MapException e) {
      if (e.problems().isEmpty()) {
        throw new AssertionError("refused without a reason: " + json, e);
      }
      return;
    }
    try {
      Gathered all = Gathered.mapped(map, "a.csv", TABLE);
      Bytes.reconcile(all, json);
    } catch (IntakeException e) {
      if (e.getMessage() == null) {
        throw e;
      }
    }
  }
}
