package org.wetmil.workbook.stream;

import java.io.Closeable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Limits;
import org.wetmil.workbook.opc.OpenedWorkbook;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.Relationships;
import org.wetmil.workbook.opc.Relationships.Relationship;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.ZipPackage;

/**
 * Reads an Excel workbook (Office Open XML, ECMA-376, transitional or strict) row by row, never
 * holding a sheet in memory. The file is opened for reading only.
 *
 * <p>Every method throws a {@link WorkbookException} when the part it needs is damaged.
 */
public final class PackageReader implements Closeable {
  private final ZipPackage zip;
  private final WorkbookKind kind;
  private final Optional<String> password;
  private final String main;
  private final Relationships relationships;
  private final WorkbookPart workbook;
  private List<String> sharedStrings;

  private PackageReader(OpenedWorkbook opened) {
    this.zip = opened.zip();
    this.kind = opened.kind();
    this.password = opened.password();
    this.main =
        Relationships.of(zip, "").findType("officeDocument").map(Relationship::target).orElse("");
    this.relationships = Relationships.of(zip, main);
    this.workbook = zip.xml(main, WorkbookPart::read);
  }

  /**
   * Opens a workbook.
   *
   * @throws WorkbookException when it is none, or of a kind that cannot be read
   */
  public static PackageReader open(Path file) {
    return open(file, Passwords.NONE);
  }

  /**
   * The same for one that may be protected.
   *
   * @throws WorkbookException when it is none, of a kind that cannot be read, or none of the
   *     passwords opens it
   */
  public static PackageReader open(Path file, Passwords passwords) {
    return of(OpenedWorkbook.open(file, passwords));
  }

  /** Reads a workbook that was opened before; it is closed with this. */
  public static PackageReader of(OpenedWorkbook opened) {
    try {
      return new PackageReader(opened);
    } catch (RuntimeException e) {
      opened.zip().close();
      throw e;
    }
  }

  /** The password that it is protected with; empty when it is not. */
  public Optional<String> password() {
    return password;
  }

  /** The parts beneath. */
  public ZipPackage zip() {
    return zip;
  }

  /** What the workbook is by its content. */
  public WorkbookKind kind() {
    return kind;
  }

  /** Name of the workbook's main part. */
  public String mainPart() {
    return main;
  }

  /**
   * The worksheets in the order of their tabs. Chart sheets, macro sheets and sheets that lead to
   * no part at all are left out.
   *
   * @throws WorkbookException.Damaged when a worksheet has lost its part, or leads to several
   */
  public List<SheetPart> sheets() {
    List<SheetPart> sheets = new ArrayList<>();
    for (WorkbookPart.Entry entry : workbook.sheets()) {
      List<Relationship> named = relationships.listId(entry.relationshipId());
      if (named.size() > 1) {
        throw new WorkbookException.Damaged(
            zip.file(), main, "the sheet \"" + entry.name() + "\" leads to several parts");
      }
      Relationship to = named.isEmpty() ? null : named.get(0);
      if (to == null || !to.type().equals("worksheet")) {
        continue;
      }
      if (!zip.has(to.target())) {
        throw new WorkbookException.Damaged(
            zip.file(), main, "the sheet \"" + entry.name() + "\" has lost its part");
      }
      sheets.add(new SheetPart(entry.name(), to.target(), entry.visibility()));
    }
    return sheets;
  }

  /** Whether it is written in the strict form of the standard, which few programs write. */
  public boolean isStrict() {
    return workbook.strict();
  }

  /** Whether dates count from 1904 instead of 1900. */
  public boolean date1904() {
    return workbook.date1904();
  }

  /** How numbers are shown. */
  public NumberFormats formats() {
    return relationships
        .findType("styles")
        .map(styles -> zip.xml(styles.target(), NumberFormats::read))
        .orElseGet(NumberFormats::none);
  }

  /** The names of the workbook in the order of the file. */
  public List<DefinedName> definedNames() {
    return workbook.names();
  }

  /** The document's own properties in the order of the file. */
  public List<CustomProperty> customProperties() {
    Relationships ofPackage = Relationships.of(zip, "");
    return ofPackage
        .findType("custom-properties")
        .or(() -> ofPackage.findType("customProperties"))
        .map(part -> zip.xml(part.target(), PackageReader::properties))
        .orElse(List.of());
  }

  private static List<CustomProperty> properties(XMLStreamReader at) throws XMLStreamException {
    List<CustomProperty> found = new ArrayList<>();
    while (XmlIn.nextChild(at)) {
      String name = XmlIn.attribute(at, "name");
      String value = "";
      while (XmlIn.nextChild(at)) {
        value = StoredText.of(at);
      }
      found.add(new CustomProperty(name == null ? "" : name, value));
    }
    return found;
  }

  /** The Excel tables of a sheet, from top to bottom and left to right. */
  public List<TableRef> tables(SheetPart sheet) {
    List<TableRef> tables = new ArrayList<>();
    for (Relationship table : Relationships.of(zip, sheet.part()).listType("table")) {
      zip.xml(table.target(), PackageReader::table).ifPresent(tables::add);
    }
    tables.sort(
        Comparator.comparingInt((TableRef table) -> table.range().firstRow())
            .thenComparingInt(table -> table.range().firstColumn()));
    return tables;
  }

  private static Optional<TableRef> table(XMLStreamReader at) throws XMLStreamException {
    String display = XmlIn.attribute(at, "displayName");
    String name = XmlIn.attribute(at, "name");
    int headerRows = XmlIn.whole(at, "headerRowCount", 1);
    int totalsRows = XmlIn.whole(at, "totalsRowCount", 0);
    String reference = XmlIn.attribute(at, "ref");
    String shown = display == null ? "" : display;
    return Optional.ofNullable(reference)
        .flatMap(CellRange::parse)
        .map(
            range ->
                new TableRef(name == null ? shown : name, shown, range, headerRows, totalsRows));
  }

  /** The notes on the cells of a sheet, by address. */
  public Map<String, String> notes(SheetPart sheet) {
    Map<String, String> notes = new LinkedHashMap<>();
    for (Relationship part : Relationships.of(zip, sheet.part()).listType("comments")) {
      zip.xml(
          part.target(),
          at -> {
            notes(at, notes);
            return null;
          });
    }
    return notes;
  }

  private static void notes(XMLStreamReader at, Map<String, String> notes)
      throws XMLStreamException {
    while (XmlIn.nextChild(at)) {
      if (!at.getLocalName().equals("commentList")) {
        XmlIn.skip(at);
        continue;
      }
      while (XmlIn.nextChild(at)) {
        String address = XmlIn.attribute(at, "ref");
        while (XmlIn.nextChild(at)) {
          if (at.getLocalName().equals("text")) {
            notes.put(address == null ? "" : address, StoredText.ofRuns(at));
          } else {
            XmlIn.skip(at);
          }
        }
      }
    }
  }

  /**
   * Gives the rows of a sheet in the order of the file until the consumer has enough.
   *
   * @return the merged cells and the filter, which stand after the rows; none where the consumer
   *     had enough before
   * @throws WorkbookException.Damaged naming the sheet, and the cell if it is one, that is wrong
   */
  public SheetRanges rows(SheetPart sheet, RowConsumer consumer) {
    SheetRows rows = new SheetRows(cells());
    return sheetXml(sheet, at -> rows.read(at, consumer));
  }

  /** What reads the cells of its sheets. */
  public StoredCells cells() {
    return new StoredCells(this::sharedStrings);
  }

  /** Reads the XML of a sheet; what is wrong with it is said with the sheet's name. */
  public <T> T sheetXml(SheetPart sheet, ZipPackage.XmlBody<T> body) {
    return zip.xml(
        sheet.part(),
        at -> {
          try {
            return body.read(at);
          } catch (XMLStreamException e) {
            throw new WorkbookException.Damaged(
                zip.file(), "sheet \"" + sheet.name() + "\"", XmlIn.reason(e), e);
          }
        });
  }

  /** Name of the part that lists the cells with formulas, if the workbook has one. */
  public Optional<String> calculationChainPart() {
    return relationships.findType("calcChain").map(Relationship::target);
  }

  /** Name of the part that holds the shared strings, if the workbook has one. */
  public Optional<String> sharedStringsPart() {
    return relationships.findType("sharedStrings").map(Relationship::target).filter(zip::has);
  }

  private List<String> sharedStrings() {
    if (sharedStrings == null) {
      sharedStrings =
          sharedStringsPart()
              .map(
                  part -> {
                    Limits.requireTree(zip, part);
                    return zip.xml(part, StoredText::sharedStrings);
                  })
              .orElse(List.of());
    }
    return sharedStrings;
  }

  @Override
  public void close() {
    zip.close();
  }
}
