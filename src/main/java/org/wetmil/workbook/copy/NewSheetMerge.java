package org.wetmil.workbook.copy;

import java.util.List;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.CellAddress;

/** Puts the rows of a new sheet into the sheet that was shaped without them. */
final class NewSheetMerge {
  private final XMLStreamReader shaped;
  private final NewRows rows;
  private final XmlOut out;

  /** Writes a sheet with its rows. */
  static void write(ZipPackage shaped, String part, NewRows rows, ZipWriter out) {
    shaped.xml(
        part,
        at -> {
          out.xml(part, to -> new NewSheetMerge(at, rows, to).write());
          return null;
        });
  }

  /** The reader stands at its root. */
  private NewSheetMerge(XMLStreamReader shaped, NewRows rows, XmlOut out) {
    this.shaped = shaped;
    this.rows = rows;
    this.out = out;
  }

  private void write() throws XMLStreamException {
    out.start(shaped);
    while (XmlIn.nextChild(shaped)) {
      switch (shaped.getLocalName()) {
        case "sheetData" -> {
          out.start(shaped);
          if (XmlIn.nextChild(shaped)) {
            throw new IllegalStateException("a sheet has rows of two kinds");
          }
          rows();
          out.end();
        }
        case "dimension" -> {
          out.startName(shaped);
          out.attribute("ref", used());
          out.end();
          XmlIn.skip(shaped);
        }
        default -> out.element(shaped);
      }
    }
    out.end();
  }

  private String used() {
    int row = Math.max(1, rows.rows()) - 1;
    int column = Math.max(1, rows.columns()) - 1;
    return row + column == 0 ? "A1" : "A1:" + new CellAddress(row, column);
  }

  private void rows() {
    String prefix = out.prefixOf(shaped.getNamespaceURI(), true);
    CellWriter cells = new CellWriter(out, prefix);
    String name = prefix.isEmpty() ? "row" : prefix + ":row";
    rows.give((row, points, added) -> row(name, row, points, added, cells));
  }

  private void row(String name, int row, float points, List<AddedCell> added, CellWriter cells) {
    out.start(name);
    out.attribute("r", Integer.toString(row + 1));
    if (points > 0) {
      out.attribute("ht", Float.toString(points));
      out.attribute("customHeight", "1");
    }
    for (AddedCell cell : added) {
      cells.write(row, cell);
    }
    out.end();
  }
}
