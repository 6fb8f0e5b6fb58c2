package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Work beside other work: what it gives, what it throws, and that it never outlives its asker. */
class BesideTest {
  @Test
  void worksOnAThreadOfItsOwnOrOnTheAskers() throws IOException {
    try (Beside<Thread> own = new Beside<>(Thread::currentThread, true);
        Beside<Thread> here = new Beside<>(Thread::currentThread, false)) {
      assertNotSame(Thread.currentThread(), own.get());
      assertSame(Thread.currentThread(), here.get());
      assertSame(own.get(), own.get(), "asked twice, done once");
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void throwsWhatTheWorkThrew(boolean isOwn) {
    try (Beside<String> beside =
        new Beside<>(
            () -> {
              throw new IOException("shorter than it was written");
            },
            isOwn)) {
      IOException thrown = assertThrows(IOException.class, beside::get);
      assertEquals("shorter than it was written", thrown.getMessage());
    }
    try (Beside<String> beside =
        new Beside<>(
            () -> {
              throw new OutOfMemoryError("of the test");
            },
            isOwn)) {
      assertThrows(OutOfMemoryError.class, beside::get);
    }
  }

  @Test
  void closingWaitsForTheThread() {
    AtomicBoolean isDone = new AtomicBoolean();
    CountDownLatch begun = new CountDownLatch(1);
    Beside<String> beside =
        new Beside<>(
            () -> {
              begun.countDown();
              Thread.sleep(50);
              isDone.set(true);
              return "";
            },
            true);
    // An interrupt while it waits does not cut the waiting short, and is not lost.
    Thread.currentThread().interrupt();
    beside.close();
    assertTrue(isDone.get());
    assertTrue(Thread.interrupted());
    assertEquals(0, begun.getCount());
  }
}
