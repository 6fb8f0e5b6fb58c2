package org.wellcurb.batch;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Parts go in one after the other, are worked on by several threads, and come out in the order in
 * which they went in. Only so many are under way at a time, so that the memory needed does not grow
 * with the input; and nothing that comes out hangs on the number of threads.
 */
final class Pipeline {
  /**
   * Parts under way beyond one a thread: enough to keep all threads at work while one is merged.
   */
  private static final int AHEAD = 2;

  private Pipeline() {}

  /** Where parts come from. */
  interface Source<P> {
    /** The next part; null after the last. */
    @Nullable P next() throws IOException, RunFailure;
  }

  /** What one thread does; one is made for each thread, and has buffers of its own. */
  interface Work<P, R> {
    /** Works on a part and puts what comes of it into an empty result. */
    void on(P part, R result) throws IOException;
  }

  /** What is done with results, in order, by the thread that called. */
  interface Merge<R> {
    /** Takes what the result holds and leaves it empty, to be used again. */
    void take(R result) throws IOException, RunFailure;
  }

  /**
   * Runs until the source is dry.
   *
   * @throws IOException or RunFailure, or whatever unchecked was thrown, by any of the three
   */
  static <P, R> void run(
      Source<P> source,
      int threads,
      Supplier<Work<P, R>> newWork,
      Supplier<R> newResult,
      Merge<R> merge)
      throws IOException, RunFailure, InterruptedException {
    BlockingQueue<Work<P, R>> works = new LinkedBlockingQueue<>();
    for (int i = 0; i < threads; i++) {
      works.add(newWork.get());
    }
    Deque<R> idle = new ArrayDeque<>();
    Deque<Future<R>> underWay = new ArrayDeque<>();
    Queue<Thread> started = new ConcurrentLinkedQueue<>();
    ExecutorService pool = Executors.newFixedThreadPool(threads, work -> thread(work, started));
    try {
      boolean dry = false;
      while (true) {
        while (!dry && underWay.size() < threads + AHEAD) {
          P part = source.next();
          if (part == null) {
            dry = true;
          } else {
            R result = idle.isEmpty() ? newResult.get() : idle.pop();
            underWay.add(pool.submit(() -> work(works, part, result)));
          }
        }
        Future<R> first = underWay.poll();
        if (first == null) {
          return;
        }
        R done = Awaited.of(first, started);
        merge.take(done);
        idle.push(done);
      }
    } catch (ExecutionException e) {
      throw unwrapped(e);
    } finally {
      stop(pool, started);
    }
  }

  private static <P, R> R work(BlockingQueue<Work<P, R>> works, P part, R result)
      throws IOException, InterruptedException {
    Work<P, R> work = works.take();
    try {
      work.on(part, result);
    } finally {
      works.add(work);
    }
    return result;
  }

  private static IOException unwrapped(ExecutionException e) throws RunFailure {
    Throwable cause = e.getCause();
    if (cause instanceof Stop.Asked asked) {
      throw asked.asFailure();
    }
    if (cause instanceof IOException io) {
      return io;
    }
    if (cause instanceof RuntimeException unchecked) {
      throw unchecked;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw new IllegalStateException(cause);
  }

  /**
   * Waits for the threads: none may touch the folder after the run has ended. A pool counts as
   * terminated a moment before its last thread is gone, so the threads themselves are waited for.
   */
  private static void stop(ExecutorService pool, Queue<Thread> started) {
    pool.shutdownNow();
    boolean interrupted = false;
    for (Thread thread : started) {
      while (thread.isAlive()) {
        try {
          thread.join();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static Thread thread(Runnable work, Queue<Thread> started) {
    Thread thread = new Thread(work, "screening");
    thread.setDaemon(true);
    started.add(thread);
    return thread;
  }
}
