package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PipelineTest {
  /** A result that is used again and again, as in a run. */
  private static final class Sum {
    long value;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8})
  void resultsComeInTheOrderOfTheParts(int threads) throws Exception {
    List<Long> merged = new ArrayList<>();
    Pipeline.<Integer, Sum>run(
        upTo(500),
        threads,
        () -> PipelineTest::squareSlowly,
        Sum::new,
        sum -> {
          merged.add(sum.value);
          sum.value = 0;
        });
    List<Long> expected = new ArrayList<>();
    for (long i = 1; i <= 500; i++) {
      expected.add(i * i);
    }
    assertEquals(expected, merged);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void onlySoManyResultsAreMade(int threads) throws Exception {
    AtomicInteger made = new AtomicInteger();
    AtomicInteger works = new AtomicInteger();
    Pipeline.<Integer, Sum>run(
        upTo(300),
        threads,
        () -> {
          works.incrementAndGet();
          return PipelineTest::squareSlowly;
        },
        () -> {
          made.incrementAndGet();
          return new Sum();
        },
        sum -> sum.value = 0);
    assertEquals(threads, works.get());
    assertTrue(made.get() <= threads + 2, () -> made + " results for " + threads + " threads");
  }

  @Test
  void emptySourceMergesNothing() throws Exception {
    Pipeline.<Integer, Sum>run(
        () -> null,
        2,
        () -> PipelineTest::squareSlowly,
        Sum::new,
        sum -> {
          throw new AssertionError("merged " + sum.value);
        });
  }

  @Test
  void failureOfAWorkerEndsTheRunAndItsThreads() {
    IOException thrown =
        assertThrows(
            IOException.class,
            () ->
                Pipeline.<Integer, Sum>run(
                    upTo(1000),
                    2,
                    () ->
                        (part, sum) -> {
                          if (part == 40) {
                            throw new IOException("part 40");
                          }
                          sum.value = part;
                        },
                    Sum::new,
                    sum -> sum.value = 0));
    assertEquals("part 40", thrown.getMessage());
    assertEquals(0, screeningThreads());
  }

  @Test
  void errorOfAWorkerIsPassedOn() {
    assertThrows(
        StackOverflowError.class,
        () ->
            Pipeline.<Integer, Sum>run(
                upTo(10),
                2,
                () ->
                    (part, sum) -> {
                      throw new StackOverflowError();
                    },
                Sum::new,
                sum -> {}));
  }

  @Test
  void failureOfTheMergeEndsTheThreads() {
    assertThrows(
        RunFailure.class,
        () ->
            Pipeline.<Integer, Sum>run(
                upTo(1000),
                3,
                () -> PipelineTest::squareSlowly,
                Sum::new,
                sum -> {
                  throw RunFailure.unusable("full");
                }));
    assertEquals(0, screeningThreads());
  }

  private static long screeningThreads() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("screening"))
        .count();
  }

  private static Pipeline.Source<Integer> upTo(int last) {
    AtomicInteger next = new AtomicInteger();
    return () -> next.get() < last ? next.incrementAndGet() : null;
  }

  /** Parts take unlike times, so that they would come out of order if they could. */
  private static void squareSlowly(int part, Sum sum) {
    assertEquals(0, sum.value, "a result that was not emptied");
    long value = (long) part * part;
    for (int i = 0; i < part * 7919 % 1000; i++) {
      Thread.onSpinWait();
    }
    sum.value = value;
  }
}
