package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every pack that ships is sound. Its schema is checked here, so that a run need not. */
class ShippedPacksTest {

  static List<String> shipped() {
    return PackLoader.shipped();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void loadsForItsAuthor(String name) {
    try {
      assertEquals(name, PackLoader.loadForAuthor(name).id());
    } catch (PackException e) {
      fail(e.shown());
    }
  }

  /** Every limit on both sides, nothing doubtful: what an author is asked for, we do too. */
  @ParameterizedTest
  @MethodSource("shipped")
  void provesClean(String name) throws PackException {
    Proof proof = Proof.of(PackLoader.loadForAuthor(name));
    assertTrue(proof.isClean(), () -> proof.statements().toString());
  }

  @Test
  void theFoldersUnderRulesShip() throws IOException {
    assertEquals(PackFinder.names(Path.of("rules")), PackLoader.shipped());
  }
}
