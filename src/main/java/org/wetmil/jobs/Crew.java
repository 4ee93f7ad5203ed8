package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.wetmil.workbook.copy.SpreadsheetClasses;

/**
 * The threads of a run over several workbooks. Small workbooks are worked on side by side; a large
 * one has the memory to itself, and one alone needs no second thread.
 */
final class Crew implements AutoCloseable {
  /** Above this size of its file a workbook is filled alone; about 5,000 lines. */
  private static final long LARGE_BYTES = 200_000;

  /** More than these would want more memory than a run of one large workbook. */
  private static final int MOST_HANDS = 8;

  private final int hands;
  private final Semaphore free;
  private final ExecutorService threads;

  /**
   * @param workbooks how many there are in all
   */
  Crew(int workbooks) {
    hands = Math.min(workbooks, Math.min(MOST_HANDS, Runtime.getRuntime().availableProcessors()));
    // fair, so that a large one is not passed by small ones for ever
    free = new Semaphore(hands, true);
    threads = hands > 1 ? threads(hands) : null;
  }

  private static ExecutorService threads(int hands) {
    SpreadsheetClasses.load();
    return Executors.newFixedThreadPool(hands, Crew::thread);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "fills a workbook");
    thread.setDaemon(true);
    return thread;
  }

  /** How many may wait to be told of: what is known of each is held until then. */
  int most() {
    return 2 * hands;
  }

  /** Does the work when there is room for it; waits until it is begun. */
  <T> Future<T> start(Path workbook, Callable<T> work) {
    if (threads == null) {
      return done(work);
    }
    int needs = workbook.toFile().length() > LARGE_BYTES ? hands : 1;
    free.acquireUninterruptibly(needs);
    return threads.submit(
        () -> {
          try {
            return work.call();
          } finally {
            free.release(needs);
          }
        });
  }

  private static <T> Future<T> done(Callable<T> work) {
    try {
      return CompletableFuture.completedFuture(work.call());
    } catch (Exception e) {
      return CompletableFuture.failedFuture(e);
    }
  }

  @Override
  public void close() {
    if (threads == null) {
      return;
    }
    threads.shutdown();
    // what was begun is put in place, though a listener failed
    boolean interrupted = false;
    while (!threads.isTerminated()) {
      try {
        threads.awaitTermination(1, TimeUnit.HOURS);
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
