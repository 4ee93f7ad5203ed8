package org.wetmil.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.Copies;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.Shaper;
import org.wetmil.workbook.copy.SheetEdit;
import org.wetmil.workbook.stream.DefinedName;
import org.wetmil.workbook.stream.PackageReader;

class FingerprintTest {
  @TempDir Path folder;

  @Test
  void isTheSha256OfTheBytes() throws IOException {
    // FIPS 180-4 examples (NIST): SHA-256 of "abc"
    assertThat(Fingerprint.of(Files.writeString(folder.resolve("abc"), "abc")).sha256())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void aFileThatChangedMeanwhileIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("job.xlsx"), "before");
    Fingerprint before = Fingerprint.of(file);
    assertThatCode(before::requireUnchanged).doesNotThrowAnyException();

    Files.writeString(file, "after");

    assertThatThrownBy(before::requireUnchanged)
        .isInstanceOf(WorkbookException.Unreadable.class)
        .hasMessageContaining("changed while it was read");
  }

  @Test
  void aResultOfAFileThatChangedIsNotPutInPlace() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Path output = folder.resolve("out.xlsx");
    Fingerprint before = Fingerprint.of(bid);
    SmallBid.write(bid, workbook -> workbook.createSheet("New"));

    assertThatThrownBy(() -> Copies.write(bid, output, checked(before)))
        .hasMessageContaining("changed while it was read");
    assertThat(folder).isDirectoryNotContaining("glob:**.tmp");
    assertThat(output).doesNotExist();
  }

  @Test
  void namesOfTheProgramAreKeptOffTheListOfNames() {
    Path output = folder.resolve("out.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false)
        .fill(SmallBid.write(folder.resolve("job.xlsx")), output);

    try (PackageReader reader = PackageReader.open(output)) {
      assertThat(reader.definedNames())
          .filteredOn(name -> name.name().startsWith("wm_"))
          .anyMatch(DefinedName::hidden)
          .anyMatch(name -> !name.hidden())
          .allMatch(
              name ->
                  name.hidden()
                      == (name.name().startsWith("wm_col_")
                          || name.name().startsWith("wm_sheet_")));
    }
  }

  private static Shaper checked(Fingerprint before) {
    return new Shaper() {
      @Override
      public List<SheetEdit> shape(LeanWorkbook workbook) {
        return List.of();
      }

      @Override
      public void beforeItIsPublished() {
        before.requireUnchanged();
      }
    };
  }
}
