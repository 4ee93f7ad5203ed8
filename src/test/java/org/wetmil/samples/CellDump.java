package org.wetmil.samples;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What the cells of a workbook hold, as text, so that two workbooks can be compared by meaning. */
public final class CellDump {
  private CellDump() {}

  public static Map<String, String> of(Path workbook) throws IOException {
    Map<String, String> cells = new TreeMap<>();
    try (InputStream in = Files.newInputStream(workbook);
        Workbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() != CellType.BLANK) {
              cells.put(sheet.getSheetName() + "!" + cell.getAddress(), text(cell));
            }
          }
        }
      }
    }
    return cells;
  }

  private static String text(Cell cell) {
    return switch (cell.getCellType()) {
      case FORMULA -> "=" + cell.getCellFormula() + " -> " + cached(cell);
      case NUMERIC -> number(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      default -> cell.toString();
    };
  }

  private static String cached(Cell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> number(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      default -> cell.getCachedFormulaResultType().toString();
    };
  }

  /** Twelve digits: what a processor of another make may round differently is left out. */
  private static String number(double value) {
    return String.format(Locale.ROOT, "%.12g", value);
  }

  public static List<String> differences(Map<String, String> before, Map<String, String> after) {
    TreeSet<String> places = new TreeSet<>(before.keySet());
    places.addAll(after.keySet());
    List<String> differences = new ArrayList<>();
    for (String place : places) {
      if (!Objects.equals(before.get(place), after.get(place))) {
        differences.add(place + ": " + before.get(place) + " became " + after.get(place));
      }
    }
    return differences;
  }
}
