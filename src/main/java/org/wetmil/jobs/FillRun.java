package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.wetmil.workbook.WorkbookException;

/**
 * Fills several workbooks; one that fails does not stop the others. Small ones are filled at the
 * same time, as many as there are cores; listeners are told one after another, in the order of the
 * inputs.
 */
public final class FillRun {
  /** Said of a workbook in place of what Java says. */
  public static final String OUT_OF_MEMORY =
      "the workbook needs more memory than Java was given; give it more with -Xmx.";

  private final Filler filler;
  private final boolean forCustomers;
  private final List<FillListener> listeners;

  /** Fills one workbook, as {@link FillJob} does; called from several threads at once. */
  @FunctionalInterface
  public interface Filler {
    /**
     * @param customer where the copy for the customer goes; null when none is asked for
     */
    FillReport fill(Path input, Path output, Path customer);
  }

  public FillRun(Filler filler, List<FillListener> listeners) {
    this(filler, false, listeners);
  }

  /**
   * @param forCustomers whether a copy for the customer is asked for with each
   */
  public FillRun(Filler filler, boolean forCustomers, List<FillListener> listeners) {
    this.filler = filler;
    this.forCustomers = forCustomers;
    this.listeners = List.copyOf(listeners);
  }

  public void fill(Inputs inputs, Outputs outputs) {
    inputs
        .refused()
        .forEach(
            refused -> listeners.forEach(one -> one.refused(refused.file(), refused.sentence())));
    Deque<Future<Consumer<FillListener>>> filling = new ArrayDeque<>();
    try (Crew crew = new Crew(inputs.files().size())) {
      for (Path input : inputs.files()) {
        filling.add(begin(input, outputs, crew));
        while (!filling.isEmpty() && (filling.peek().isDone() || filling.size() > crew.most())) {
          tell(filling.remove());
        }
      }
      while (!filling.isEmpty()) {
        tell(filling.remove());
      }
    }
  }

  private void tell(Future<Consumer<FillListener>> done) {
    listeners.forEach(came(done));
  }

  private static Consumer<FillListener> came(Future<Consumer<FillListener>> done) {
    boolean interrupted = false;
    while (true) {
      try {
        Consumer<FillListener> what = done.get();
        if (interrupted) {
          Thread.currentThread().interrupt();
        }
        return what;
      } catch (InterruptedException e) {
        interrupted = true;
      } catch (ExecutionException e) {
        throw new IllegalStateException(e.getCause());
      }
    }
  }

  /** Names the results in the order of the inputs: no name depends on who was faster. */
  private Future<Consumer<FillListener>> begin(Path input, Outputs outputs, Crew crew) {
    Path output;
    Path customer;
    try {
      output = outputs.of(input);
      customer = forCustomers ? outputs.customer(output) : null;
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      // to name them, the input is read
      return CompletableFuture.completedFuture(failed(input, e));
    }
    return crew.start(input, () -> fill(input, output, customer));
  }

  /** Fills one; gives what listeners are to be told. */
  private Consumer<FillListener> fill(Path input, Path output, Path customer) {
    try {
      FillReport report = filler.fill(input, output, customer);
      return listener -> listener.filled(report);
    } catch (RuntimeException
        | OutOfMemoryError
        | StackOverflowError
        | LinkageError
        | AssertionError e) {
      return failed(input, e);
    }
  }

  private static Consumer<FillListener> failed(Path input, Throwable e) {
    if (e instanceof WorkbookException.ThereAlready there) {
      return listener -> listener.refused(input, there.orNumbered());
    }
    if (e instanceof WorkbookException) {
      return listener -> listener.refused(input, e.getMessage());
    }
    if (e instanceof OutOfMemoryError) {
      return listener -> listener.refused(input, input + ": " + OUT_OF_MEMORY);
    }
    return listener -> listener.fault(input, e);
  }
}
