package org.wetmil.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** The second version of the sample clinic, which the README compares with the first. */
final class ClinicSecond {
  static final Path FILE = Samples.FOLDER.resolve("clinic-refit-second.xlsx");

  private ClinicSecond() {}

  /** A longer waiting room, a misspelt coating mended, door frames added and a higher wage. */
  static SampleBook book() {
    return ClinicRefit.book()
        .put("Bid", "E5", 27)
        .put("Bid", "J33", "latex")
        .insert(
            "Bid", "Waiting room|Ground|door frames|painted||||4||oil-based|White|gloss|2||410", 9)
        .put("Settings", "B11", 36);
  }

  /** Writes the file, unless its cells are what they were. */
  static void write(Path folder) throws IOException {
    Path anew = folder.resolve(FILE.getFileName());
    book().save(anew);
    if (!Files.exists(FILE)
        || !CellDump.differences(CellDump.of(FILE), CellDump.of(anew)).isEmpty()) {
      Files.copy(anew, FILE, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
