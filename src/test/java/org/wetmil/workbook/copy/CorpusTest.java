package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.stream.PackageReader;

/** Runs against workbooks by others, in a folder that the environment names. */
class CorpusTest {
  @TempDir Path folder;

  @Test
  void everyWorkbookIsCopiedUnchangedOrRefusedInASentence(TestReporter reporter)
      throws IOException {
    String corpus = System.getenv("WETMIL_CORPUS");
    assumeTrue(corpus != null, "WETMIL_CORPUS names no folder of workbooks");
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of(corpus))) {
      files = all.filter(file -> file.toString().matches(".*\\.(xls|xlt)[xm]")).sorted().toList();
    }
    assertThat(files).isNotEmpty();
    Map<String, Integer> outcomes = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    for (Path file : files) {
      outcomes.merge(outcome(file, faults), 1, Integer::sum);
    }
    outcomes.forEach((outcome, count) -> reporter.publishEntry(outcome, count.toString()));
    assertThat(faults).isEmpty();
  }

  private String outcome(Path file, List<String> faults) throws IOException {
    Path output = folder.resolve("out.xls" + (file.toString().endsWith("m") ? "m" : "x"));
    try {
      Copies.write(
          file,
          output,
          true,
          workbook -> {
            workbook.createSheet("wm added").createRow(0).createCell(0).setCellValue("ours");
            return List.of();
          });
    } catch (WorkbookException e) {
      return e.getClass().getSimpleName();
    } catch (RuntimeException e) {
      faults.add(file.getFileName() + ": " + e);
      return "fault";
    }
    try (PackageReader before = PackageReader.open(file);
        PackageReader after = PackageReader.open(output)) {
      List<String> changes = Meaning.changes(before, after);
      changes.forEach(change -> faults.add(file.getFileName() + ": " + change));
      return changes.isEmpty() ? "copied" : "changed";
    } catch (WorkbookException e) {
      return "copied, but a sheet cannot be read";
    }
  }
}
