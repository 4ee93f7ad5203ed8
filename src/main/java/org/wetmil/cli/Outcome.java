package org.wetmil.cli;

import java.nio.file.Path;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;

/** The exit code of a run: the highest that any of its workbooks gives. */
final class Outcome implements FillListener {
  private final Severity failOn;
  private int code = ExitCode.DONE;

  /**
   * @param failOn least severity that fails a run; null when findings do not
   */
  Outcome(Severity failOn) {
    this.failOn = failOn;
  }

  int code() {
    return code;
  }

  @Override
  public void filled(FillReport report) {
    boolean found =
        failOn != null
            && report.located().stream()
                .anyMatch(each -> each.finding().severity().compareTo(failOn) >= 0);
    if (report.lacksCustomerCopy()) {
      raise(ExitCode.UNUSABLE);
    }
    raise(found ? ExitCode.FINDINGS : ExitCode.DONE);
  }

  @Override
  public void refused(Path input, String sentence) {
    raise(ExitCode.UNUSABLE);
  }

  @Override
  public void fault(Path input, Throwable fault) {
    raise(ExitCode.FAULT);
  }

  private void raise(int other) {
    code = Math.max(code, other);
  }
}
