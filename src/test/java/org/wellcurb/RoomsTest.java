package org.wellcurb;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Each room imports only what its package-info allows, and no two rooms import each other. */
class RoomsTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.wellcurb");

  /** Who may import what, as the package-info files say. */
  private static final Map<String, List<String>> MAY_IMPORT = new TreeMap<>();

  static {
    MAY_IMPORT.put("quantity", List.of());
    MAY_IMPORT.put("record", List.of("quantity"));
    MAY_IMPORT.put("workings", List.of("quantity", "record"));
    MAY_IMPORT.put("formula", List.of("quantity", "record", "workings"));
    MAY_IMPORT.put("judgement", List.of("formula", "workings", "record", "quantity"));
    MAY_IMPORT.put("rulepack", List.of("judgement", "formula", "workings", "record", "quantity"));
    MAY_IMPORT.put("intake", List.of("quantity", "record"));
    MAY_IMPORT.put(
        "screening", List.of("rulepack", "judgement", "formula", "workings", "record", "quantity"));
    MAY_IMPORT.put("crosscheck", List.of("screening", "record", "quantity"));
    MAY_IMPORT.put(
        "report",
        List.of(
            "crosscheck",
            "screening",
            "rulepack",
            "judgement",
            "formula",
            "workings",
            "record",
            "quantity"));
    List<String> all =
        List.of(
            "report",
            "crosscheck",
            "screening",
            "intake",
            "rulepack",
            "judgement",
            "formula",
            "workings",
            "record",
            "quantity");
    MAY_IMPORT.put("batch", all);
    List<String> allAndBatch = new java.util.ArrayList<>(all);
    allAndBatch.add("batch");
    MAY_IMPORT.put("desk", List.copyOf(allAndBatch));
    allAndBatch.add("desk");
    MAY_IMPORT.put("cli", List.copyOf(allAndBatch));
  }

  @Test
  void roomsImportOnlyWhatTheyMay() {
    var rooms = layeredArchitecture().consideringOnlyDependenciesInLayers();
    for (String room : MAY_IMPORT.keySet()) {
      rooms = rooms.optionalLayer(room).definedBy("org.wellcurb." + room + "..");
    }
    for (Map.Entry<String, List<String>> e : MAY_IMPORT.entrySet()) {
      String[] allowed = e.getValue().toArray(new String[0]);
      rooms =
          allowed.length == 0
              ? rooms.whereLayer(e.getKey()).mayNotAccessAnyLayer()
              : rooms.whereLayer(e.getKey()).mayOnlyAccessLayers(allowed);
    }
    rooms.check(PROGRAM);
  }

  @Test
  void noRoomsGoInCircles() {
    slices().matching("org.wellcurb.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void everyPackageStandsInARoom() {
    for (var javaClass : PROGRAM) {
      String name = javaClass.getPackageName();
      if (!name.equals("org.wellcurb")) {
        String room = name.substring("org.wellcurb.".length()).split("\\.")[0];
        if (!MAY_IMPORT.containsKey(room)) {
          throw new AssertionError(javaClass.getName() + " stands in no room of the table");
        }
      }
    }
  }
}
