package org.wetmil.cli;

import java.io.PrintWriter;
import org.wetmil.jobs.audit.AuditListener;

/** Counts on a terminal how many bids are read; silent where nobody watches. */
final class Progress implements AuditListener {
  private final PrintWriter err;
  private final boolean watched = System.console() != null;
  private int shown;

  Progress(PrintWriter err) {
    this.err = err;
  }

  @Override
  public synchronized void read(int done, int all) {
    if (watched && done > shown) {
      shown = done;
      err.print("\r" + done + " of " + all + " bids read" + (done == all ? "\n" : ""));
      err.flush();
    }
  }
}
