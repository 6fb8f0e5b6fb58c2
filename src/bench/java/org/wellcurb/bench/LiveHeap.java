package org.wellcurb.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryMXBean;
import java.util.Locale;
import org.wellcurb.cli.Main;

/**
 * Runs a command and says how much memory was in use at most right after a collection: a collection
 * is asked for again and again while the command runs, so that what is counted is held by somebody.
 * The last line on standard output is the figure, in bytes.
 */
public final class LiveHeap {
  private static final long MILLIS_BETWEEN = 200;

  private LiveHeap() {}

  /** What the command line of the program would be. */
  public static void main(String[] arguments) throws InterruptedException {
    Locale.setDefault(Locale.ROOT);
    Looking looking = new Looking();
    looking.start();
    int code = Main.run(arguments, System.out, System.err);
    looking.interrupt();
    looking.join();
    System.out.println(looking.most);
    System.exit(code);
  }

  private static final class Looking extends Thread {
    private final MemoryMXBean memory = ManagementFactory.getMemoryMXBean();
    private long most;

    Looking() {
      super("looking");
      setDaemon(true);
    }

    @Override
    public void run() {
      try {
        while (true) {
          memory.gc();
          most = Math.max(most, memory.getHeapMemoryUsage().getUsed());
          sleep(MILLIS_BETWEEN);
        }
      } catch (InterruptedException e) {
        // The command has ended.
      }
    }
  }
}
