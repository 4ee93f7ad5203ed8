package org.wetmil.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.wetmil.jobs.FillJob;

/** The invented samples and their filled twins. */
enum Samples {
  CLINIC("clinic-refit", ClinicRefit::book),
  GYM("gym-hall", SchoolGym::book);

  static final Path FOLDER = Path.of("sample-workbooks");

  /** Printed on Basis of every twin, so that filling a sample anew gives the same twin. */
  static final LocalDate DATE = LocalDate.of(2026, 1, 5);

  private static final String VERSION = "sample";

  private final String stem;
  private final Supplier<SampleBook> book;

  Samples(String stem, Supplier<SampleBook> book) {
    this.stem = stem;
    this.book = book;
  }

  Path input() {
    return FOLDER.resolve(stem + ".xlsx");
  }

  Path twin() {
    return FOLDER.resolve(stem + "-filled.xlsx");
  }

  /** Writes the sample, unless its cells are what they were: the twin names its SHA-256. */
  void write(Path folder) throws IOException {
    Files.createDirectories(FOLDER);
    Path anew = folder.resolve(input().getFileName());
    book.get().save(anew);
    boolean same =
        Files.exists(input())
            && CellDump.differences(CellDump.of(input()), CellDump.of(anew)).isEmpty();
    if (!same) {
      Files.copy(anew, input(), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Fills the sample into a file. */
  void fill(Path output) {
    new FillJob(DATE, VERSION, true).fill(input(), output);
  }

  /** What differs between the sample filled now and its twin. */
  List<String> changes(Path folder) throws IOException {
    Path anew = folder.resolve(stem + "-anew.xlsx");
    fill(anew);
    return Files.exists(twin())
        ? CellDump.differences(CellDump.of(twin()), CellDump.of(anew))
        : List.of("the twin is new");
  }
}
