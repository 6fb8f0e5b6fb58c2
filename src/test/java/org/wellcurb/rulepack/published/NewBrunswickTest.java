package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class NewBrunswickTest {
  private static final Code NB = Code.of("new-brunswick", "New Brunswick, Canada");
  private static final String BUILT = "dates.completed=1990-06-29";

  @Test
  void table_1_septic_tank() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "septic tank", "15 m")
        .least("septic-tank-distance", "setback.septic_tank", "15 m", "well.method=rotary", BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "septic tank", "30 m")
        .least("septic-tank-distance", "setback.septic_tank", "30 m", "well.method=dug", BUILT);
  }

  @Test
  void table_1_field() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "leaching field", "25 m")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "25 m",
            "well.method=rotary",
            BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "leaching field", "30 m")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "30 m",
            "well.method=dug",
            BUILT);
  }

  @Test
  void table_1_cesspool() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "cesspool", "30 m")
        .least("cesspool-distance", "setback.cesspool", "30 m", "well.method=rotary", BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "cesspool", "30 m")
        .least("cesspool-distance", "setback.cesspool", "30 m", "well.method=dug", BUILT);
  }

  @Test
  void table_1_sewer() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "sewer line", "3 m")
        .least("sewer-line-distance", "setback.sewer_line", "3 m", "well.method=rotary", BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "sewer line", "3 m")
        .least("sewer-line-distance", "setback.sewer_line", "3 m", "well.method=dug", BUILT);
  }

  @Test
  void table_1_building() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "building", "2 m")
        .least("building-distance", "setback.building", "2 m", "well.method=rotary", BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "building", "2 m")
        .least("building-distance", "setback.building", "2 m", "well.method=dug", BUILT);
  }

  @Test
  void table_1_road() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "road", "10 m")
        .least("road-distance", "setback.road", "10 m", "well.method=rotary", BUILT);
    NB.states("Reg. 90-79 (Table 1 restatement)", "road", "10 m")
        .least("road-distance", "setback.road", "10 m", "well.method=dug", BUILT);
  }

  @Test
  void n_90_79_s_3_wells_since_1990() {
    String[] near = {"setback.road=9 m", "dates.completed=1990-06-28"};
    NB.states("90-79 s. 3", "regulation filed", "1990-06-29")
        .fallsShort("road-distance", near[0], BUILT);
    NB.doesNotApply("road-distance", near);
  }

  @Test
  void n_93_203_tag() {
    NB.states("93-203 s. 3(3)", "identifier tag", "on completion")
        .meets("well-tag", "well.tag=NB-12");
    NB.fallsShort("well-tag", "record.id=T-1");
  }
}
