package org.wellcurb.screening;

import java.util.Random;

/**
 * How a generated well was drilled, cased, screened and grouted. All depths in feet from ground.
 */
final class GoodHole {
  private final Random random;
  private final GoodForm form;

  GoodHole(Random random, GoodForm form) {
    this.random = random;
    this.form = form;
  }

  private double between(double least, double most) {
    return Math.rint((least + (most - least) * random.nextDouble()) * 10) / 10;
  }

  private void common(double stickup, double casingDepth, double depth, double spare) {
    form.amount("well.stickup", stickup);
    form.amount("well.casing_depth", casingDepth);
    if (random.nextBoolean()) {
      form.amount("well.casing_length", casingDepth + stickup + between(0, 1));
    }
    form.amount("well.depth", depth);
    form.amount("well.drilled_depth", depth + spare);
    form.word("well.cap", GoodForm.pick(random, "sealed", "vented sealed", "welded"));
    form.word("well.vent_screened", "yes");
    form.word("well.replacement", "no");
  }

  private void casing(double diameter, String material) {
    form.amount("well.casing_diameter", diameter);
    form.word("well.casing_size_is", "nominal");
    form.word("well.casing_material", material);
  }

  private void grout(double bore, double bottom) {
    form.amount("well.bore_diameter", bore);
    form.amount("grout.top", random.nextInt(4) == 0 ? between(3, 8) : 0);
    form.amount("grout.bottom", bottom);
    form.word(
        "grout.material",
        GoodForm.pick(random, "neat cement", "bentonite slurry", "bentonite chips"));
    form.word("grout.method", "tremie");
    if (random.nextInt(3) == 0) {
      form.amount("grout.bags", 5 + random.nextInt(40));
      form.amount("grout.bag_mass", 94);
      form.amount("grout.water_per_bag", 6);
    }
  }

  /** Open hole in rock, the casing grouted all the way. */
  void rock() {
    double casing = between(20, 150);
    double depth = casing + between(30, 500);
    common(between(1, 3), casing, depth, random.nextInt(3) == 0 ? between(0, 20) : 0);
    casing(6, GoodForm.pick(random, "steel", "pvc"));
    grout(10, random.nextInt(3) == 0 ? casing + between(0, 8) : casing);
    form.word("well.method", GoodForm.pick(random, "rotary", "cable tool", "casing advance"));
    form.word("well.open_hole", "yes");
    form.amount("well.open_hole_diameter", 6);
    form.amount("well.rock_depth", between(1, casing - 5));
  }

  /** A liner in an open hole, with or without a screen in it. */
  void liner() {
    rock();
    double casing = form.get("well.casing_depth");
    double depth = form.get("well.depth");
    double top = random.nextBoolean() ? 0 : casing - between(5, 15);
    form.amount("well.liner_top", Math.max(0, top));
    form.amount("well.liner_bottom", depth);
    form.amount("well.liner_inside_diameter", 4);
    form.amount("grout.bottom", casing);
    if (random.nextBoolean()) {
      form.amount("well.screen_top", depth - between(10, 25));
      form.amount("well.screen_bottom", depth - between(0, 5));
      form.word("well.screen_setting", "in liner");
    }
  }

  /** Screen below the casing in sand and gravel, with a filter pack. */
  void gravel() {
    double casing = between(25, 300);
    double screen = between(4, 40);
    double sump = random.nextInt(3) == 0 ? between(0, 10) : 0;
    common(between(1, 3), casing, casing + screen + sump, between(0, 15));
    casing(random.nextBoolean() ? 4 : 5, "pvc");
    form.amount("well.screen_top", casing + (random.nextInt(5) == 0 ? 0.5 : 0));
    form.amount("well.screen_bottom", casing + screen);
    form.word("well.screen_setting", "attached");
    double pack = casing - between(2, 12);
    if (random.nextInt(3) > 0) {
      form.amount("well.filter_pack_top", pack);
      form.amount("well.filter_pack_bottom", casing + screen + Math.min(sump, 2));
    }
    grout(9, Math.min(pack, between(18, 60)));
    form.word("well.method", "rotary");
    form.word("well.open_hole", "no");
  }

  /** Screen set through a driven casing, which was pulled back to uncover it. */
  void telescoped() {
    double casing = between(30, 200);
    double screen = between(4, 20);
    common(between(1, 3), casing, casing + screen, between(0, 5));
    casing(6, "steel");
    form.amount("well.screen_top", casing - between(0.5, 4));
    form.amount("well.screen_bottom", casing + screen);
    form.word("well.screen_setting", "telescoped");
    form.word("well.method", GoodForm.pick(random, "cable tool", "casing advance"));
    form.word("well.open_hole", "no");
    if (random.nextBoolean()) {
      grout(10, Math.min(casing, between(18, 50)));
    }
  }

  /** Casing cut open with a perforator beside the water. */
  void perforated() {
    double casing = between(60, 300);
    common(between(1, 2), casing, casing, between(0, 4));
    casing(8, "steel");
    double bottom = casing - between(0, 10);
    form.amount("well.screen_bottom", bottom);
    form.amount("well.screen_top", bottom - between(5, 40));
    form.word("well.screen_setting", "perforated casing");
    grout(12, between(15, 20));
    form.word("well.method", "cable tool");
    form.word("well.open_hole", "no");
  }

  /** A pointed pipe driven into sand. */
  void driven() {
    double casing = between(12, 35);
    common(between(0.5, 2), casing, casing + 3, 0);
    casing(2, "steel");
    form.amount("well.screen_top", casing);
    form.amount("well.screen_bottom", casing + 3);
    form.word("well.screen_setting", "attached");
    form.word("well.method", GoodForm.pick(random, "driven", "jetted"));
    form.word("grout.material", "none");
  }

  /** Rings of concrete in a dug or bored hole; water enters at the bottom and the joints. */
  void dug() {
    double depth = between(15, 60);
    double casing = random.nextBoolean() ? depth : depth - between(0, 4);
    common(between(1, 3), casing, depth, 0);
    form.amount("well.casing_diameter", 36);
    form.word("well.casing_size_is", "inside");
    form.amount("well.casing_wall", 3);
    form.word("well.casing_material", "concrete");
    grout(48, between(9, 11));
    form.word("well.method", GoodForm.pick(random, "dug", "bored"));
  }

  /** A loop of pipe in a bore that is grouted over its whole length. */
  void heatExchange() {
    double casing = between(20, 80);
    double depth = between(150, 500);
    common(between(-4, 1), casing, depth, between(0, 5));
    casing(6, "steel");
    grout(6, depth);
    form.amount("grout.top", between(0, 5));
    form.word("well.method", "casing advance");
    form.word("well.open_hole", "yes");
  }

  /** The well ends in a pit, as was usual once. */
  void inPit() {
    form.amount("well.stickup", -between(3, 6));
    if (form.has("well.casing_length")) {
      form.amount("well.casing_length", form.get("well.casing_depth") + form.get("well.stickup"));
    }
    form.word("well.head", "pit");
  }
}
