package org.wetmil.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the invented sample workbooks. Run by hand; DEVELOPERS.md says how. */
public final class RewriteSamples {
  static final Path FOLDER = Path.of("sample-workbooks");

  private RewriteSamples() {}

  public static void main(String[] args) throws IOException {
    Files.createDirectories(FOLDER);
    ClinicRefit.book().save(FOLDER.resolve("clinic-refit.xlsx"));
  }
}
