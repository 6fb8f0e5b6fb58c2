package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published row that a function of this room can be held against, by its own tolerance. */
class PublishedValuesTest {
  private static final Map<String, Consumer<PublishedRow>> CHECKS = checks();

  private static Map<String, Consumer<PublishedRow>> checks() {
    Map<String, Consumer<PublishedRow>> checks = new HashMap<>();
    for (Map<String, Consumer<PublishedRow>> subject :
        List.of(PublishedLevels.checks(), PublishedTank.checks())) {
      checks.putAll(subject);
    }
    return checks;
  }

  static Stream<PublishedRow> rows() {
    return PublishedRow.all().stream().filter(row -> CHECKS.containsKey(row.quantity()));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void published(PublishedRow row) {
    Consumer<PublishedRow> check = CHECKS.get(row.quantity());
    assertNotNull(check);
    check.accept(row);
  }
}
