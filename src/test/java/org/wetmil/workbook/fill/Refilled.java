package org.wetmil.workbook.fill;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;

/** A workbook that was filled, changed by hand and filled again. */
final class Refilled {
  private final Path folder;
  private Path file;
  private FillReport report;
  private int fills;

  private Refilled(Path folder, Path bid) {
    this.folder = folder;
    this.file = bid;
  }

  /** Fills a bid for the first time. */
  static Refilled first(Path folder, Path bid) {
    return new Refilled(folder, bid).again(false);
  }

  /** The same as it stands, to be worked on in another folder; this one is left as it is. */
  Refilled in(Path other) {
    Refilled copy = new Refilled(other, file);
    copy.report = report;
    copy.fills = fills;
    return copy;
  }

  /** Fills what the last fill gave, on the next day. */
  Refilled again(boolean refresh) {
    fills++;
    Path output = folder.resolve("fill-" + fills + ".xlsx");
    report = new FillJob(LocalDate.of(2024, 5, fills), "0.1.0", false, refresh).fill(file, output);
    file = output;
    return this;
  }

  Refilled again() {
    return again(false);
  }

  /** Changes the workbook by hand. */
  Refilled change(Consumer<XSSFWorkbook> hand) {
    Path changed = folder.resolve("changed-" + fills + ".xlsx");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(changed)) {
      hand.accept(book);
      book.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    file = changed;
    return this;
  }

  <T> T look(Function<XSSFWorkbook, T> eye) {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      return eye.apply(book);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a check found, as sentences. */
  List<String> found(String check) {
    return report.located().stream()
        .filter(each -> each.finding().check().equals(check))
        .map(each -> each.finding().message())
        .toList();
  }

  /** The cell of a row, from 0, under a heading in the first row that begins so. */
  static Cell under(XSSFSheet sheet, String heading, int row) {
    Cell top =
        StreamSupport.stream(sheet.getRow(0).spliterator(), false)
            .filter(cell -> cell.getStringCellValue().startsWith(heading))
            .reduce((one, last) -> last)
            .orElseThrow();
    return sheet.getRow(row).getCell(top.getColumnIndex());
  }
}
