package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.workbook.WorkbookException;

/** Fills several workbooks one after another; one that fails does not stop the others. */
public final class FillRun {
  private final Filler filler;
  private final List<FillListener> listeners;

  /** Fills one workbook, as {@link FillJob} does. */
  @FunctionalInterface
  public interface Filler {
    FillReport fill(Path input, Path output);
  }

  public FillRun(Filler filler, List<FillListener> listeners) {
    this.filler = filler;
    this.listeners = List.copyOf(listeners);
  }

  public void fill(Inputs inputs, Outputs outputs) {
    inputs
        .refused()
        .forEach(
            refused -> listeners.forEach(one -> one.refused(refused.file(), refused.sentence())));
    inputs.files().forEach(input -> fill(input, outputs));
  }

  private void fill(Path input, Outputs outputs) {
    FillReport report;
    try {
      report = filler.fill(input, outputs.of(input));
    } catch (WorkbookException e) {
      listeners.forEach(listener -> listener.refused(input, e.getMessage()));
      return;
    } catch (OutOfMemoryError e) {
      String sentence =
          input + ": the workbook needs more memory than Java was given; give it more with -Xmx.";
      listeners.forEach(listener -> listener.refused(input, sentence));
      return;
    } catch (RuntimeException | StackOverflowError | LinkageError | AssertionError e) {
      listeners.forEach(listener -> listener.fault(input, e));
      return;
    }
    listeners.forEach(listener -> listener.filled(report));
  }
}
