package org.wetmil;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A bid of three lines for tests: one without fault, one whose tip is too coarse, one whose coating
 * is unknown, so that it cannot be filled.
 */
public final class SmallBid {
  private static final String XLSX =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
  private static final Map<String, String> TYPES =
      Map.of(
          ".xlsm", "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
          ".xltm", "application/vnd.ms-excel.template.macroEnabled.main+xml",
          ".xltx", "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml");

  private SmallBid() {}

  /** Writes it, as a workbook of the kind that the name promises. */
  public static Path write(Path file) {
    return write(file, workbook -> {});
  }

  /** Writes it with a change. */
  public static Path write(Path file, Consumer<XSSFWorkbook> change) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet bid = workbook.createSheet("Bid");
      row(bid, 0, "Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating", "Tip");
      row(bid, 1, "Office", "walls", 12, 10, 9, "latex", "517");
      row(bid, 2, "Office", "ceiling", 12, 10, 9, "latex", "531");
      row(bid, 3, "Hall", "walls", 20, 6, 9, "nonesuch", "517");
      change.accept(workbook);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      String ending = file.toString().substring(file.toString().lastIndexOf('.'));
      Files.write(file, ofType(TYPES.getOrDefault(ending, XLSX), bytes.toByteArray()));
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sets the cells of a row; numbers become numbers, all else text. */
  public static void row(XSSFSheet sheet, int at, Object... values) {
    XSSFRow row = sheet.createRow(at);
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof Number number) {
        row.createCell(i).setCellValue(number.doubleValue());
      } else {
        row.createCell(i).setCellValue(values[i].toString());
      }
    }
  }

  private static byte[] ofType(String type, byte[] workbook) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] part = in.readAllBytes();
        if (entry.getName().equals("[Content_Types].xml")) {
          String text = new String(part, StandardCharsets.UTF_8).replace(XLSX, type);
          part = text.getBytes(StandardCharsets.UTF_8);
        }
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(part);
      }
    }
    return bytes.toByteArray();
  }
}
