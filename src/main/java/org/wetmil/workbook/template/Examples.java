package org.wetmil.workbook.template;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Tables;
import org.wetmil.ledger.CsvText;
import org.wetmil.quantity.UnitSystem;

/** One invented row for each table, shown in a note: on the sheet it would be taken for real. */
final class Examples {
  private static final String FILE = "examples.csv";
  private static final List<CsvText.Row> ROWS = rows();

  /** Not the author of notes on findings, which are taken away by the next fill. */
  private static final String AUTHOR = "Template";

  private Examples() {}

  /** The example's cells by heading; none where a table needs no example. */
  static Map<String, String> of(Tables table, UnitSystem system) {
    Map<String, String> cells = new LinkedHashMap<>();
    ROWS.stream()
        .map(CsvText.Row::fields)
        .filter(fields -> fields.get(0).equals(table.title()))
        .forEach(fields -> cells.put(fields.get(1), fields.get(system == UnitSystem.US ? 2 : 3)));
    return cells;
  }

  static void note(XSSFSheet sheet, Tables table, UnitSystem system) {
    Map<String, String> cells = of(table, system);
    if (cells.isEmpty()) {
      return;
    }
    String text =
        cells.entrySet().stream()
            .map(cell -> cell.getKey() + ": " + cell.getValue())
            .collect(Collectors.joining("\n", "An example, invented\n", ""));
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    int lines = cells.size() + 2;
    XSSFComment note =
        drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 1, 1, 4, 1 + lines));
    note.setAddress(new CellAddress(0, 0));
    note.setAuthor(AUTHOR);
    note.setString(new XSSFRichTextString(text));
  }

  private static List<CsvText.Row> rows() {
    try (InputStream in = Examples.class.getResourceAsStream(FILE)) {
      String text =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
              .lines()
              .filter(line -> !line.startsWith("#"))
              .collect(Collectors.joining("\n"));
      return CsvText.rows(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(FILE, e);
    }
  }
}
