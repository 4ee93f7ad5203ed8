package org.wetmil.cli;

/** What the process ends with; when several apply, the highest. */
final class ExitCode {
  static final int DONE = 0;

  /** A finding at or above the severity that the user named. */
  static final int FINDINGS = 1;

  static final int USAGE = 2;

  /** An input that cannot be used, or an output that exists; the rest of the batch is done. */
  static final int UNUSABLE = 3;

  static final int FAULT = 4;

  private ExitCode() {}
}
