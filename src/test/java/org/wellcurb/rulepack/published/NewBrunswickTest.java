package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class NewBrunswickTest {
  private static final Code NB = Code.of("new-brunswick", "New Brunswick, Canada");

  @Test
  void table_1_septic_tank() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "septic tank", "15 m")
        .least("septic-tank-distance", "setback.septic_tank", "15 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "septic tank", "30 m")
        .least("septic-tank-distance", "setback.septic_tank", "30 m", "well.method=dug");
  }

  @Test
  void table_1_field() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "leaching field", "25 m")
        .least(
            "absorption-field-distance", "setback.absorption_field", "25 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "leaching field", "30 m")
        .least("absorption-field-distance", "setback.absorption_field", "30 m", "well.method=dug");
  }

  @Test
  void table_1_cesspool() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "cesspool", "30 m")
        .least("cesspool-distance", "setback.cesspool", "30 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "cesspool", "30 m")
        .least("cesspool-distance", "setback.cesspool", "30 m", "well.method=dug");
  }

  @Test
  void table_1_sewer() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "sewer line", "3 m")
        .least("sewer-line-distance", "setback.sewer_line", "3 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "sewer line", "3 m")
        .least("sewer-line-distance", "setback.sewer_line", "3 m", "well.method=dug");
  }

  @Test
  void table_1_building() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "building", "2 m")
        .least("building-distance", "setback.building", "2 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "building", "2 m")
        .least("building-distance", "setback.building", "2 m", "well.method=dug");
  }

  @Test
  void table_1_road() {
    NB.states("Reg. 90-79 (Table 1 restatement)", "road", "10 m")
        .least("road-distance", "setback.road", "10 m", "well.method=rotary");
    NB.states("Reg. 90-79 (Table 1 restatement)", "road", "10 m")
        .least("road-distance", "setback.road", "10 m", "well.method=dug");
  }

  @Test
  void n_93_203_tag() {
    NB.states("93-203 s. 3(3)", "identifier tag", "on completion")
        .meets("well-tag", "well.tag=NB-12");
    NB.fallsShort("well-tag", "record.id=T-1");
  }
}
