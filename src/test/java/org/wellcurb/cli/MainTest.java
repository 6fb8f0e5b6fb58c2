package org.wellcurb.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MainTest {
  @Test
  void noCommandIsOneLineAndExitTwo() {
    Ran ran = Ran.with();
    assertEquals(2, ran.code());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertEquals("", ran.out());
  }

  @Test
  void unknownOptionIsOneLineAndExitTwo() {
    Ran ran = Ran.with("--nonsense");
    assertEquals(2, ran.code());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().contains("--nonsense"), ran.err());
    assertEquals("", ran.out());
  }

  @Test
  void unknownCommandIsOneLineAndExitTwo() {
    Ran ran = Ran.with("nonsense");
    assertEquals(2, ran.code());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().contains("nonsense"), ran.err());
  }

  @Test
  void versionIsThatOfTheBuild() {
    Ran ran = Ran.with("--version");
    assertEquals(0, ran.code());
    assertTrue(ran.out().matches("wellcurb \\d+\\.\\d+\\.\\d+\\R"), ran.out());
  }

  @Test
  void helpSaysTheExitCodes() {
    Ran ran = Ran.with("--help");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("3 no input could be read"), ran.out());
  }
}
