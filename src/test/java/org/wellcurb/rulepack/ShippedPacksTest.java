package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

  @Test
  void theFoldersUnderRulesShip() throws IOException {
    assertEquals(PackFinder.names(Path.of("rules")), PackLoader.shipped());
  }
}
