package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Writes on a thread of its own, in the order in which it is told: compressing takes a quarter of
 * the time of a large bid, and the next rows need not wait for it. What goes wrong there is thrown
 * where the writing was asked for, once.
 */
final class Behind {
  /** Steps that may wait: each at most what a buffer holds. */
  private static final int MOST_WAITING = 16;

  /** What is done there. */
  interface Step {
    void run() throws IOException;
  }

  private final BlockingQueue<Step> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
  private final BlockingQueue<byte[]> used = new ArrayBlockingQueue<>(MOST_WAITING);
  private final Thread thread = new Thread(this::work, "writes the output");
  private volatile Step last;
  private volatile Throwable failure;
  private boolean told;

  Behind() {
    thread.setDaemon(true);
    thread.start();
  }

  private void work() {
    Step step;
    do {
      step = next();
      // after a failure the rest is let pass, so that nobody waits for room
      if (failure == null || step == last) {
        try {
          step.run();
        } catch (IOException | RuntimeException | Error e) {
          failure = failure == null ? e : failure;
        }
      }
    } while (step != last);
  }

  private Step next() {
    while (true) {
      try {
        return waiting.take();
      } catch (InterruptedException e) {
        // nobody interrupts this thread; it ends with the last step
      }
    }
  }

  /** Does this after all that came before. */
  void then(Step step) {
    tell();
    add(step);
  }

  /** A stream whose bytes are passed on to another, there. */
  OutputStream to(OutputStream out) {
    return new OutputStream() {
      @Override
      public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
      }

      @Override
      public void write(byte[] bytes, int offset, int length) {
        byte[] known = used.poll();
        byte[] copy = known != null && known.length >= length ? known : new byte[length];
        System.arraycopy(bytes, offset, copy, 0, length);
        then(
            () -> {
              out.write(copy, 0, length);
              used.offer(copy);
            });
      }
    };
  }

  /** Ends with a last step, which is done even after a failure, and waits for it. */
  void close(Step step) {
    last = step;
    add(step);
    boolean interrupted = false;
    while (true) {
      try {
        thread.join();
        break;
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    tell();
  }

  private void add(Step step) {
    boolean interrupted = false;
    while (true) {
      try {
        waiting.put(step);
        break;
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private void tell() {
    if (failure == null || told) {
      return;
    }
    told = true;
    if (failure instanceof IOException e) {
      throw new UncheckedIOException(e);
    } else if (failure instanceof RuntimeException e) {
      throw e;
    } else if (failure instanceof Error e) {
      throw e;
    }
    throw new IllegalStateException(failure);
  }
}
