package org.wetmil.jobs;

import java.nio.file.Path;

/** Is told what came of each workbook of a run, in the order of the inputs. */
public interface FillListener {
  void filled(FillReport report);

  /** A workbook that cannot be used, or a result that cannot be written. */
  void refused(Path input, String sentence);

  /** A fault of the program. */
  void fault(Path input, Throwable fault);
}
