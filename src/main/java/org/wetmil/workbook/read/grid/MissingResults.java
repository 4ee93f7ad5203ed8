package org.wetmil.workbook.read.grid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.RawCell;

/**
 * Computes formulas that the workbook holds without a result, as programs leave them that write
 * workbooks without computing them. The workbook is opened whole for that, once and only then.
 */
public final class MissingResults implements AutoCloseable {
  private final Opener workbook;
  private final int mostRows;
  private final Map<String, Set<String>> notComputed = new LinkedHashMap<>();
  private XSSFWorkbook book;
  private FormulaEvaluator evaluator;
  private boolean cannotOpen;

  /** Gives the bytes of the workbook, without any protection. */
  public interface Opener {
    InputStream open() throws IOException;
  }

  public MissingResults(Opener workbook, int mostRows) {
    this.workbook = workbook;
    this.mostRows = mostRows;
  }

  /** Addresses of formulas that stayed without a result, by sheet. */
  public Map<String, Set<String>> notComputed() {
    return notComputed;
  }

  /**
   * The rows with missing results put in where they can be computed.
   *
   * @param unwanted cells whose results nobody asks for; looked at only where results are missing
   */
  List<GridRow> computed(String sheet, List<GridRow> rows, Supplier<List<CellRange>> unwanted) {
    boolean none =
        rows.stream().flatMap(row -> row.cells().stream()).noneMatch(MissingResults::isMissing);
    if (none) {
      return rows;
    }
    boolean tooMany = rows.size() > mostRows;
    List<CellRange> left = unwanted.get();
    List<GridRow> result = new ArrayList<>();
    for (GridRow row : rows) {
      List<RawCell> cells =
          row.cells().stream()
              .map(
                  cell ->
                      isMissing(cell) && !isIn(left, cell) ? computed(sheet, cell, tooMany) : cell)
              .toList();
      result.add(new GridRow(row.row(), row.hidden(), cells));
    }
    return result;
  }

  /** Whether a cell holds a formula without a stored result. */
  public static boolean isMissing(RawCell cell) {
    return cell.kind() == CellKind.BLANK && cell.formula() != null;
  }

  private static boolean isIn(List<CellRange> ranges, RawCell cell) {
    return ranges.stream().anyMatch(range -> range.contains(cell.row(), cell.column()));
  }

  private RawCell computed(String sheet, RawCell cell, boolean tooMany) {
    RawCell result = tooMany ? cell : evaluated(sheet, cell);
    if (isMissing(result)) {
      String address = CellAddress.letters(cell.column());
      notComputed.computeIfAbsent(sheet, any -> new TreeSet<>()).add(address + (cell.row() + 1));
    }
    return result;
  }

  private RawCell evaluated(String sheet, RawCell cell) {
    if (!open()) {
      return cell;
    }
    try {
      Sheet in = book.getSheet(sheet);
      Row row = in == null ? null : in.getRow(cell.row());
      Cell at = row == null ? null : row.getCell(cell.column());
      CellValue value = at == null ? null : evaluator.evaluate(at);
      return value == null ? cell : with(cell, value);
    } catch (RuntimeException | StackOverflowError e) {
      // The library throws many kinds for functions that it does not know, and asks an array
      // formula outside its own cells for ever; the cell is reported.
      return cell;
    }
  }

  private boolean open() {
    if (book == null && !cannotOpen) {
      try (InputStream in = workbook.open()) {
        book = new XSSFWorkbook(in);
        evaluator = book.getCreationHelper().createFormulaEvaluator();
        evaluator.setIgnoreMissingWorkbooks(true);
      } catch (IOException | RuntimeException e) {
        cannotOpen = true;
      }
    }
    return book != null;
  }

  private static RawCell with(RawCell cell, CellValue value) {
    CellType type = value.getCellType();
    CellKind kind =
        switch (type) {
          case NUMERIC -> CellKind.NUMBER;
          case STRING -> CellKind.TEXT;
          case BOOLEAN -> CellKind.BOOLEAN;
          case ERROR -> CellKind.ERROR;
          default -> CellKind.BLANK;
        };
    String text =
        switch (type) {
          case NUMERIC -> Double.toString(value.getNumberValue());
          case STRING -> value.getStringValue();
          case BOOLEAN -> value.getBooleanValue() ? "1" : "0";
          case ERROR -> FormulaError.forInt(value.getErrorValue()).getString();
          default -> "";
        };
    return new RawCell(cell.row(), cell.column(), kind, text, cell.formula(), cell.style());
  }

  @Override
  public void close() {
    if (book != null) {
      try {
        book.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
