package org.wetmil.cli;

import java.io.PrintWriter;
import java.util.Locale;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarConsumer;
import me.tongfei.progressbar.ProgressBarStyle;
import org.wetmil.jobs.audit.AuditListener;

/** How far long work has come, on a terminal; silent where nobody watches. */
final class Progress implements AuditListener, AutoCloseable {
  /** A terminal of the usual 80 columns stays in its line; asking for more takes native code. */
  private static final int WIDTH = 79;

  private static final int REFRESH_MS = 200;

  private final PrintWriter to;
  private final boolean watched;
  private final String task;
  private ProgressBar bar;
  private int done;

  /**
   * @param task what is done, in two or three words
   * @param watched whether a person watches
   */
  Progress(PrintWriter to, boolean watched, String task) {
    this.to = to;
    this.watched = watched;
    this.task = task;
  }

  /** Whether standard input and output are a terminal. */
  static boolean isWatched() {
    return System.console() != null;
  }

  /** Shows how much is done; of one piece only that it goes on, as nobody knows how far it is. */
  @Override
  public synchronized void read(int nowDone, int ofAll) {
    done = Math.max(done, nowDone);
    if (done == ofAll) {
      hide();
    } else if (bar != null) {
      bar.stepTo(done);
    } else {
      show(ofAll);
    }
  }

  /** Prints something where the bar stands, which comes back when more is done. */
  synchronized void aside(Runnable printing) {
    hide();
    printing.run();
  }

  @Override
  public synchronized void close() {
    hide();
  }

  private void show(int all) {
    if (watched) {
      bar =
          new ProgressBarBuilder()
              .setTaskName(task)
              .setInitialMax(all == 1 ? -1 : all)
              .setStyle(ProgressBarStyle.ASCII)
              .setUpdateIntervalMillis(REFRESH_MS)
              .continuousUpdate()
              .hideEta()
              .setConsumer(new Line(to))
              .build()
              .stepTo(done);
    }
  }

  private void hide() {
    if (bar != null) {
      bar.close();
      bar = null;
      // not left to the library, which forgets it of a bar that was hardly there
      to.print("\r" + " ".repeat(WIDTH) + "\r");
      to.flush();
    }
  }

  /** One line of a terminal, written over and over. */
  private record Line(PrintWriter to) implements ProgressBarConsumer {
    @Override
    public int getMaxRenderedLength() {
      return WIDTH;
    }

    @Override
    public void accept(String text) {
      to.print("\r" + String.format(Locale.ROOT, "%-" + WIDTH + "s", text));
      to.flush();
    }

    @Override
    public void close() {}
  }
}
