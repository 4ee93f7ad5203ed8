package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.wetmil.workbook.stream.PackageReader;

/** The copy without rows as the library holds it, opened on a thread of its own. */
final class LibraryCopy implements AutoCloseable {
  private final PackageReader original;
  private final Scratch emptied;
  private FutureTask<Opened> opening = new FutureTask<>(this::open);

  /**
   * What was opened.
   *
   * @param strings how many shared strings the original has
   * @param opened never to be closed but reverted, since closing would save
   */
  record Opened(int strings, OPCPackage opened, LeanWorkbook workbook) {}

  /**
   * Begins to open it.
   *
   * @param emptied where the copy without rows goes
   */
  LibraryCopy(PackageReader original, Scratch emptied) {
    this.original = original;
    this.emptied = emptied;
    Thread thread = new Thread(opening, "opens a workbook");
    thread.setDaemon(true);
    thread.start();
  }

  private Opened open() {
    int strings;
    try (OutputStream out = emptied.write()) {
      strings = EmptiedCopy.write(original, out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    // Read and write, since parts are added.
    OPCPackage opened = openPackage();
    try {
      return new Opened(strings, opened, openWorkbook(opened));
    } catch (RuntimeException | Error e) {
      opened.revert();
      throw e;
    }
  }

  private OPCPackage openPackage() {
    try {
      return emptied.opcPackage();
    } catch (IOException | OpenXML4JException | RuntimeException | StackOverflowError e) {
      throw CopyDamage.found(original.zip(), e);
    }
  }

  private LeanWorkbook openWorkbook(OPCPackage opened) {
    try {
      return new LeanWorkbook(opened);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw CopyDamage.found(original.zip(), e);
    }
  }

  /**
   * Gives what was opened, once: while rows are merged, nothing holds it.
   *
   * @throws org.wetmil.workbook.WorkbookException when the original could not be understood
   */
  Opened take() {
    FutureTask<Opened> task = opening;
    opening = null;
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException e) {
          interrupted = true;
        } catch (ExecutionException e) {
          if (e.getCause() instanceof Error error) {
            throw error;
          }
          throw (RuntimeException) e.getCause();
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Waits for the thread, whatever became of it. */
  @Override
  public void close() {
    try {
      if (opening != null) {
        take().opened().revert();
      }
    } catch (RuntimeException | Error e) {
      // the copy is not wanted any more, and so it does not matter why there is none
    }
  }
}
