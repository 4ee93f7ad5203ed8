package org.wetmil.workbook.recalc;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The formulas of a workbook with their values, as stored and as computed anew. */
final class Formulas {
  /** Relative difference at which two computations of one formula count as the same. */
  private static final double SAME = 1e-9;

  private Formulas() {}

  /** Stored values of all formula cells, by sheet and address. */
  static Map<String, Object> stored(Path workbook) throws IOException {
    Map<String, Object> values = new LinkedHashMap<>();
    try (Workbook book = open(workbook)) {
      forEachCell(
          book,
          cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
              values.put(place(cell), stored(cell));
            }
          });
    }
    return values;
  }

  /** Values of some cells, whether formulas or not. */
  static Map<String, Object> values(Path workbook, Iterable<String> places) throws IOException {
    Map<String, Object> all = new LinkedHashMap<>();
    try (Workbook book = open(workbook)) {
      forEachCell(book, cell -> all.put(place(cell), stored(cell)));
    }
    Map<String, Object> values = new LinkedHashMap<>();
    places.forEach(place -> values.put(place, all.get(place)));
    return values;
  }

  /** Values of all formula cells as the spreadsheet library computes them. */
  static Map<String, Object> evaluated(Path workbook) throws IOException {
    Map<String, Object> values = new LinkedHashMap<>();
    try (Workbook book = open(workbook)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      forEachCell(
          book,
          cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
              CellValue value = evaluator.evaluate(cell);
              values.put(
                  place(cell),
                  value.getCellType() == CellType.NUMERIC
                      ? (Object) value.getNumberValue()
                      : value.getStringValue());
            }
          });
    }
    return values;
  }

  /** A copy whose formulas have lost their stored values, so that they must be computed. */
  static void strip(Path workbook, Path stripped) throws IOException {
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(workbook));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(stripped))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] bytes = in.readAllBytes();
        if (entry.getName().startsWith("xl/worksheets/sheet")) {
          String xml = new String(bytes, StandardCharsets.UTF_8);
          xml = xml.replaceAll("(</f>|<f[^>]*/>)<v>[^<]*</v>", "$1");
          bytes = xml.getBytes(StandardCharsets.UTF_8);
        }
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(bytes);
      }
    }
  }

  /** Where two sets of values differ, in words. */
  static List<String> differences(Map<String, Object> stored, Map<String, Object> anew) {
    List<String> differences = new ArrayList<>();
    stored.forEach(
        (place, value) -> {
          Object other = anew.get(place);
          if (!same(value, other)) {
            differences.add(place + " stored " + value + ", computed " + other);
          }
        });
    return differences;
  }

  private static boolean same(Object a, Object b) {
    if (a instanceof Double x && b instanceof Double y) {
      return Math.abs(x - y) <= SAME * Math.max(Math.abs(x), 1e-300) || x.equals(y);
    }
    return String.valueOf(a).equals(String.valueOf(b));
  }

  private static Object stored(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> cell.getNumericCellValue();
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> cell.getBooleanCellValue();
      case ERROR -> "error " + cell.getErrorCellValue();
      default -> "";
    };
  }

  private static String place(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  private static void forEachCell(Workbook book, Consumer<Cell> consumer) {
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        row.forEach(consumer);
      }
    }
  }

  private static Workbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
