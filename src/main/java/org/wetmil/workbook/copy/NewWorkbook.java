package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.workbook.opc.ZipPackage;

/** Writes a workbook that was made from nothing; the same content gives the same file. */
public final class NewWorkbook {
  private static final int COMPRESSION = 9;

  private NewWorkbook() {}

  /**
   * Writes a workbook, whole or not at all.
   *
   * @param overwrite whether a file that is there already may be replaced
   * @throws org.wetmil.workbook.WorkbookException.Unwritable when it cannot be written
   */
  public static void write(XSSFWorkbook workbook, Path output, boolean overwrite) {
    write(workbook, List.of(), output, overwrite);
  }

  /**
   * The same for a workbook that was made from other files.
   *
   * @param inputs files that must stay as they are
   */
  public static void write(
      XSSFWorkbook workbook, List<Path> inputs, Path output, boolean overwrite) {
    LibrarySettings.apply();
    // the library notes when it was made, which would make each file another
    workbook.getProperties().getCoreProperties().setCreated(Optional.empty());
    try (OutputFile files = OutputFile.claim(inputs, output, overwrite)) {
      Path asMade = files.temporary();
      try (OutputStream out = files.open(asMade)) {
        LibrarySave.write(workbook, out);
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
      Path timeless = files.temporary();
      try (ZipPackage from = ZipPackage.open(asMade);
          ZipWriter out = new ZipWriter(files.open(timeless), COMPRESSION)) {
        LeanWorkbook lean = workbook instanceof LeanWorkbook each ? each : null;
        Map<String, NewRows> rows = lean == null ? Map.of() : lean.byPart();
        Map<String, Stamps> stamps = lean == null ? Map.of() : lean.stampsByPart();
        for (String part : from.names()) {
          String key = Parts.key(part);
          if (rows.containsKey(key)) {
            NewSheetMerge.write(from, part, rows.get(key), out);
          } else if (stamps.containsKey(key)) {
            stamps.get(key).write(from, part, out);
          } else {
            out.copy(from, part);
          }
        }
      }
      files.publish(timeless);
    }
  }
}
