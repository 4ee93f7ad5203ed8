package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.workbook.WorkbookException;

/** Fills several workbooks one after another; one that fails does not stop the others. */
public final class FillRun {
  private final FillJob job;
  private final List<FillListener> listeners;

  public FillRun(FillJob job, List<FillListener> listeners) {
    this.job = job;
    this.listeners = List.copyOf(listeners);
  }

  public void fill(Inputs inputs, Outputs outputs) {
    inputs.files().forEach(input -> fill(input, outputs));
  }

  private void fill(Path input, Outputs outputs) {
    FillReport report;
    try {
      report = job.fill(input, outputs.of(input));
    } catch (WorkbookException e) {
      listeners.forEach(listener -> listener.refused(input, e.getMessage()));
      return;
    } catch (RuntimeException e) {
      listeners.forEach(listener -> listener.fault(input, e));
      return;
    }
    listeners.forEach(listener -> listener.filled(report));
  }
}
