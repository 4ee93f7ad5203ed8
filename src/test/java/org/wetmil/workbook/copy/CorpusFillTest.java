package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/**
 * Puts a bid into each workbook of a folder of real ones, fills it, and holds the rest to what it
 * was: whatever else a workbook has is not ours to change.
 */
class CorpusFillTest {
  private static final String BID = "Bid to fill";

  @TempDir Path folder;

  @Test
  void fillingABidLeavesTheRestOfEveryWorkbookAsItWas(TestReporter reporter) throws IOException {
    String corpus = System.getenv("WETMIL_CORPUS");
    assumeTrue(corpus != null, "WETMIL_CORPUS names no folder of workbooks");
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of(corpus))) {
      files = all.filter(file -> file.toString().matches(".*\\.(xls|xlt)[xm]")).sorted().toList();
    }
    Map<String, Integer> outcomes = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    for (Path file : files) {
      outcomes.merge(outcome(file, faults), 1, Integer::sum);
    }
    outcomes.forEach((outcome, count) -> reporter.publishEntry(outcome, count.toString()));
    assertThat(faults).isEmpty();
    assertThat(outcomes).containsKey("filled");
  }

  private String outcome(Path file, List<String> faults) {
    String ending = file.toString().endsWith("m") ? "m" : "x";
    Path bid = folder.resolve("bid.xls" + ending);
    Path filled = folder.resolve("filled.xls" + ending);
    try {
      Copies.write(
          file,
          bid,
          true,
          workbook -> {
            addBid(workbook);
            return List.of();
          });
      new FillJob(LocalDate.of(2026, 1, 5), "test", true).fill(bid, filled);
    } catch (WorkbookException e) {
      return e.getClass().getSimpleName();
    } catch (RuntimeException e) {
      faults.add(file.getFileName() + ": " + e);
      return "fault";
    }
    try (PackageReader before = PackageReader.open(bid);
        PackageReader after = PackageReader.open(filled)) {
      List<String> changes =
          new ArrayList<>(
              Meaning.changes(before, after).stream().filter(change -> !isOurs(change)).toList());
      if (!after.definedNames().containsAll(before.definedNames())) {
        changes.add("a name is lost");
      }
      if (!after.customProperties().containsAll(before.customProperties())) {
        changes.add("a property is lost");
      }
      if (!cells(after).containsAll(cells(before))) {
        changes.add("a cell of the bid is lost or altered");
      }
      changes.forEach(change -> faults.add(file.getFileName() + ": " + change));
      return changes.isEmpty() ? "filled" : "changed";
    } catch (WorkbookException e) {
      return "filled, but a sheet cannot be read";
    }
  }

  /** What filling is to change: the bid's own rows, and the names and properties that mark it. */
  private static boolean isOurs(String change) {
    return change.startsWith("rows of " + BID)
        || change.startsWith("names changed")
        || change.startsWith("properties changed");
  }

  private static Set<String> cells(PackageReader reader) {
    SheetPart sheet =
        reader.sheets().stream().filter(each -> each.name().equals(BID)).findFirst().orElseThrow();
    Set<String> cells = new HashSet<>();
    reader.rows(
        sheet,
        row -> {
          for (RawCell cell : row.cells()) {
            cells.add(cell.row() + " " + cell.column() + " " + cell.kind() + " " + cell.text());
          }
          return true;
        });
    return cells;
  }

  private static void addBid(XSSFWorkbook workbook) {
    XSSFSheet sheet = workbook.createSheet(BID);
    String[] headings = {"Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating"};
    XSSFRow head = sheet.createRow(0);
    for (int i = 0; i < headings.length; i++) {
      head.createCell(i).setCellValue(headings[i]);
    }
    String[] surfaces = {"walls", "ceiling", "no such surface"};
    for (int i = 0; i < surfaces.length; i++) {
      XSSFRow row = sheet.createRow(i + 1);
      row.createCell(0).setCellValue("Room " + i);
      row.createCell(1).setCellValue(surfaces[i]);
      row.createCell(2).setCellValue(20 + i);
      row.createCell(3).setCellValue(15);
      row.createCell(4).setCellValue(9);
      row.createCell(5).setCellValue("latex");
    }
  }
}
