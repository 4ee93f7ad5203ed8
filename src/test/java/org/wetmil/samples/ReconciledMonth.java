package org.wetmil.samples;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.wetmil.jobs.ReconcileJob;
import org.wetmil.jobs.ReconcileReport;
import org.wetmil.jobs.ReconcileRequest;

/** The invented month reconciled as a bookkeeper would: April, the clinic's bid filled. */
public final class ReconciledMonth {
  static final Path TWIN = Samples.FOLDER.resolve("spring-month-reconciled.xlsx");

  private ReconciledMonth() {}

  /** Reconciles the month into a file. */
  public static ReconcileReport write(Path output) {
    return ReconcileJob.run(
        new ReconcileRequest(
            List.of(
                Samples.FOLDER.resolve("clinic-refit-filled.xlsx"),
                Samples.FOLDER.resolve("school-gym.xlsx"),
                Samples.FOLDER.resolve("mill-loft.xlsx")),
            List.of(Samples.FOLDER.resolve("spring-month-purchases.csv")),
            null,
            LocalDate.of(2026, 4, 1),
            LocalDate.of(2026, 4, 30),
            null,
            output,
            true,
            LocalDate.of(2026, 5, 4),
            "sample"));
  }
}
