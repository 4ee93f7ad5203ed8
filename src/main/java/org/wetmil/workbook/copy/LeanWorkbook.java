package org.wetmil.workbook.copy;

import java.io.IOException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook of the library whose new sheets hold no cells: those are kept here beside it. */
public final class LeanWorkbook extends XSSFWorkbook {
  private final Map<XSSFSheet, NewRows> rows = new IdentityHashMap<>();
  private final Map<XSSFDrawing, Stamps> stamps = new IdentityHashMap<>();

  /** A workbook without sheets. */
  public LeanWorkbook() {}

  LeanWorkbook(OPCPackage opened) throws IOException {
    super(opened);
  }

  HeldCells held(XSSFSheet sheet) {
    return (HeldCells) rows.computeIfAbsent(sheet, each -> new HeldCells());
  }

  /** Says what gives the rows of a new sheet once the file is written. */
  public void later(XSSFSheet sheet, NewRows given) {
    if (rows.put(sheet, given) != null) {
      throw new IllegalStateException(sheet.getSheetName() + " has its rows already");
    }
  }

  /** The copies of the shapes of a drawing that are made once the file is written. */
  public Stamps stamps(XSSFDrawing drawing) {
    return stamps.computeIfAbsent(drawing, each -> new Stamps());
  }

  /** The rows of a sheet; null when the library holds them. */
  public NewRows rows(XSSFSheet sheet) {
    return rows.get(sheet);
  }

  /** The rows of each sheet by the name of its part. */
  Map<String, NewRows> byPart() {
    Map<String, NewRows> byPart = new HashMap<>();
    rows.forEach(
        (sheet, given) ->
            byPart.put(Parts.key(sheet.getPackagePart().getPartName().getName()), given));
    return byPart;
  }

  /** The copies of shapes of each drawing by the name of its part. */
  Map<String, Stamps> stampsByPart() {
    Map<String, Stamps> byPart = new HashMap<>();
    stamps.forEach(
        (drawing, given) ->
            byPart.put(Parts.key(drawing.getPackagePart().getPartName().getName()), given));
    return byPart;
  }
}
