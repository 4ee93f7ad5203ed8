package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.jobs.TemplateJob;
import org.wetmil.quantity.UnitSystem;

/** The drop-down lists of a template, as LibreOffice computes the names they stand for. */
class TemplateListsTest {
  @TempDir Path folder;

  @Test
  void listsReachAsFarAsTheEstimatorsOwnNames() throws IOException, InterruptedException {
    Office.assumePresent();
    Path asked = folder.resolve("asked.xlsx");
    TemplateJob.write(asked, UnitSystem.US, false);
    try (XSSFWorkbook book = open(asked)) {
      book.getSheet("Coatings").getRow(1).getCell(0).setCellValue("Meadow Matt");
      // a row left blank between two
      book.getSheet("Coatings").getRow(3).getCell(0).setCellValue("Barn Gloss");
      book.removeSheetAt(book.getSheetIndex("Surfaces"));
      XSSFRow row = book.createSheet("Asked").createRow(0);
      row.createCell(0).setCellFormula("ROWS(list_coatings)");
      row.createCell(1).setCellFormula("INDEX(list_coatings,ROWS(list_coatings))");
      row.createCell(2).setCellFormula("ROWS(list_sprayers)");
      row.createCell(3).setCellFormula("ROWS(list_surfaces)");
      book.setForceFormulaRecalculation(true);
      try (OutputStream out = Files.newOutputStream(asked)) {
        book.write(out);
      }
    }

    Path anew = Office.computed(List.of(asked), folder).get(0);

    int coatings = Catalogue.builtIn().rows(Tables.COATINGS).size();
    int surfaces = Catalogue.builtIn().rows(Tables.SURFACES).size();
    assertThat(
            Formulas.values(anew, List.of("Asked!A1", "Asked!B1", "Asked!C1", "Asked!D1")).values())
        .containsExactly(coatings + 3.0, "Barn Gloss", 1.0, (double) surfaces);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
