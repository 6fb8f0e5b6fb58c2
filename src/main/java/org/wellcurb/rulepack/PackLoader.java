package org.wellcurb.rulepack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Loads packs: reads, checks and proves them, with the packs that they are built on. */
public final class PackLoader {

  /** How much is looked at. */
  private enum Care {
    /** The schema is asked, and every example is run. */
    ALL,
    /**
     * As little as a run needs, so that it starts quickly: the schema is asked only to say what is
     * wrong with a shape that the reader stumbled over, and packs that ship, whose examples the
     * tests of the build run, do not run them again.
     */
    ENOUGH
  }

  private final Care care;
  private final Map<String, Loaded> loaded = new HashMap<>();
  private final Deque<PackFinder.Found> chain = new ArrayDeque<>();

  private PackLoader(Care care) {
    this.care = care;
  }

  /**
   * Loads a pack for screening.
   *
   * @param what a folder with a {@code pack.json}, a file, or the name of a pack that ships
   * @throws PackException with everything that is wrong with it
   */
  public static Pack load(String what) throws PackException {
    return new PackLoader(Care.ENOUGH).whole(what);
  }

  /**
   * Loads a pack for its author: the same, with the greatest care. {@link #load} asks the schema
   * only where something looks wrong, and takes the examples of packs that ship as proved.
   *
   * @throws PackException with everything that is wrong with it
   */
  public static Pack loadForAuthor(String what) throws PackException {
    return new PackLoader(Care.ALL).whole(what);
  }

  /** Names of the packs that ship, in order. */
  public static List<String> shipped() {
    return PackFinder.shippedNames();
  }

  /**
   * Name of the folder in which a pack's {@code pack.json} stands; empty where it stands in none.
   */
  public static String folder(String what) {
    PackFinder.Found found = PackFinder.find(what);
    return found == null || found.path() == null || !found.path().endsWith("pack.json")
        ? ""
        : found.name();
  }

  private Pack whole(String what) throws PackException {
    PackFinder.Found found = PackFinder.find(what);
    if (found == null) {
      String mend =
          Mends.nearest(what, shipped(), "give a folder with a pack.json in it, or such a file");
      throw new PackException(List.of(PackProblem.without(what, "there is no such pack", mend)));
    }
    Loaded result = load(found);
    if (!result.problems().isEmpty()) {
      throw new PackException(result.problems());
    }
    return result.pack();
  }

  private Loaded load(PackFinder.Found found) throws PackException {
    Loaded known = loaded.get(found.identity());
    if (known != null) {
      return known;
    }
    PackBytes bytes = PackBytes.read(found);
    Problems problems = new Problems(PackText.of(found.shown(), bytes.text()));
    Json root = JsonReader.read(problems);
    PackReader reader = new PackReader(problems);
    Inheritance inherited = new Inheritance();
    chain.push(found);
    List<String> builtOn = new ArrayList<>();
    for (Map.Entry<Json, String> each : reader.builtOn(root).entrySet()) {
      Loaded base = base(found, each.getKey(), each.getValue(), problems, inherited);
      inherited.isCutShort |= base == null;
      if (base != null) {
        builtOn.add(each.getValue());
        inherited.add(each.getKey(), base);
      }
    }
    chain.pop();
    boolean runExamples = care == Care.ALL || found.path() != null;
    Loaded result = reader.read(root, bytes, inherited, builtOn, runExamples);
    if (root != null && (care == Care.ALL || !problems.stumbles().isEmpty())) {
      PackSchema.check(root, problems);
    }
    List<PackProblem> all = new ArrayList<>(result.problems());
    all.addAll(problems.list());
    Loaded whole =
        new Loaded(
            result.pack(),
            result.ancestors(),
            result.ruleIds(),
            result.sourceIds(),
            result.brokenTables(),
            all);
    loaded.put(found.identity(), whole);
    return whole;
  }

  private @Nullable Loaded base(
      PackFinder.Found found, Json at, String name, Problems problems, Inheritance inherited) {
    PackFinder.Found base = PackFinder.beside(found, name);
    if (base == null) {
      problems.at(
          at,
          "there is no pack " + name + " beside this one's folder, nor among those that ship",
          Mends.nearest(name, PackFinder.namesBeside(found), "mend the name"));
      return null;
    }
    List<String> round = new ArrayList<>();
    for (PackFinder.Found above : chain) {
      round.add(above.name());
      if (above.identity().equals(base.identity())) {
        java.util.Collections.reverse(round);
        round.add(round.get(0));
        problems.at(
            at,
            "the packs are built on one another in a circle: " + String.join(" on ", round),
            "take one of these names away");
        return null;
      }
    }
    Loaded result;
    try {
      result = load(base);
    } catch (PackException e) {
      inherited.problems.addAll(e.problems());
      return null;
    }
    String id = result.pack().id();
    if (!id.isEmpty() && !id.equals(name)) {
      problems.at(
          at, "the pack in the folder " + name + " calls itself " + id, "mend one of the names");
    }
    return result;
  }
}
