package org.wetmil.workbook.opc;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.wetmil.workbook.WorkbookException;

/** What a file is by its content; its name may say anything. */
public enum WorkbookKind {
  XLSX("an Excel workbook", ".xlsx"),
  XLSM("an Excel workbook with macros", ".xlsm"),
  XLTX("an Excel template", ".xlsx"),
  XLTM("an Excel template with macros", ".xlsm"),
  XLSB("a binary workbook (.xlsb)", ""),
  XLS("a workbook of Excel 97-2003 (.xls)", ""),
  ENCRYPTED("a workbook protected with a password", ""),
  ODS("an OpenDocument spreadsheet (.ods)", ""),
  TEXT("a text file (such as .csv or .txt)", ""),
  EMPTY("the file is empty", ""),
  OTHER("this is no workbook", "");

  private static final int SNIFFED_BYTES = 8192;

  private final String description;
  private final String outputExtension;

  WorkbookKind(String description, String outputExtension) {
    this.description = description;
    this.outputExtension = outputExtension;
  }

  /** The extension of a workbook filled from one of this kind, with its dot. */
  public String outputExtension() {
    return outputExtension;
  }

  /**
   * The kind of a file.
   *
   * @throws WorkbookException when the file cannot be read, or is a damaged zip file
   */
  public static WorkbookKind of(Path file) {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(SNIFFED_BYTES);
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    }
    if (head.length == 0) {
      return EMPTY;
    }
    if (begins(head, 'P', 'K', 3, 4) || begins(head, 'P', 'K', 5, 6)) {
      try (ZipPackage zip = ZipPackage.open(file)) {
        return ofZip(zip);
      }
    }
    if (begins(head, 0xD0, 0xCF, 0x11, 0xE0)) {
      return ofOle2(file);
    }
    if (head[0] == 9 && head.length > 2 && (head[1] == 0 || head[1] == 2 || head[1] == 4)) {
      return XLS;
    }
    return isText(head) ? TEXT : OTHER;
  }

  /**
   * Refuses a file that is no workbook of a readable kind.
   *
   * @throws WorkbookException with the sentence for what it is instead
   */
  public static WorkbookKind require(Path file) {
    return require(file, of(file));
  }

  /** The same for what was in a protected file. */
  static WorkbookKind require(ZipPackage zip) {
    return require(zip.file(), ofZip(zip));
  }

  static WorkbookKind require(Path file, WorkbookKind kind) {
    return switch (kind) {
      case XLSX, XLSM, XLTX, XLTM -> kind;
      case ENCRYPTED -> throw new WorkbookException.Encrypted(file, false);
      case XLSB, XLS, ODS, TEXT -> throw new WorkbookException.OtherFormat(file, kind.description);
      case EMPTY, OTHER -> throw new WorkbookException.NotAWorkbook(file, kind.description);
    };
  }

  private static WorkbookKind ofZip(ZipPackage zip) {
    if (zip.has("mimetype")) {
      try (InputStream in = zip.bytes("mimetype")) {
        String type = new String(in.readNBytes(200), StandardCharsets.US_ASCII);
        return type.contains("opendocument.spreadsheet") ? ODS : OTHER;
      } catch (IOException e) {
        return OTHER;
      }
    }
    if (!zip.has("[Content_Types].xml")) {
      return OTHER;
    }
    String main =
        Relationships.of(zip, "")
            .findType("officeDocument")
            .map(Relationships.Relationship::target)
            .orElse("");
    String type = contentType(zip, main).toLowerCase(Locale.ROOT);
    if (type.contains("sheet.binary")) {
      return XLSB;
    }
    if (!zip.has(main) || !(type.contains("spreadsheetml") || type.contains("ms-excel"))) {
      return OTHER;
    }
    if (type.contains("ms-excel.sheet.macroenabled")) {
      return XLSM;
    }
    if (type.contains("ms-excel.template.macroenabled")) {
      return XLTM;
    }
    if (type.contains("spreadsheetml.template")) {
      return XLTX;
    }
    return type.contains("spreadsheetml.sheet") ? XLSX : OTHER;
  }

  private static String contentType(ZipPackage zip, String part) {
    return zip.xml(
        "[Content_Types].xml",
        at -> {
          String byExtension = "";
          while (XmlIn.nextChild(at)) {
            String name = XmlIn.attribute(at, "PartName");
            String extension = XmlIn.attribute(at, "Extension");
            String type = XmlIn.attribute(at, "ContentType");
            if (name != null && type != null && name.equalsIgnoreCase("/" + part)) {
              return type;
            }
            if (extension != null && type != null && endsWith(part, "." + extension)) {
              byExtension = type;
            }
            XmlIn.skip(at);
          }
          return byExtension;
        });
  }

  private static boolean endsWith(String text, String ending) {
    return text.regionMatches(true, text.length() - ending.length(), ending, 0, ending.length());
  }

  private static WorkbookKind ofOle2(Path file) {
    try (POIFSFileSystem ole = new POIFSFileSystem(file.toFile(), true)) {
      DirectoryNode root = ole.getRoot();
      if (root.hasEntryCaseInsensitive("EncryptedPackage")) {
        return ENCRYPTED;
      }
      boolean excel =
          root.hasEntryCaseInsensitive("Workbook") || root.hasEntryCaseInsensitive("Book");
      return excel ? XLS : OTHER;
    } catch (IOException | RuntimeException e) {
      // The library throws many kinds on a broken container; none of them is a readable workbook.
      return OTHER;
    }
  }

  private static boolean begins(byte[] head, int... expected) {
    for (int i = 0; i < expected.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean isText(byte[] head) {
    if (begins(head, 0xFF, 0xFE) || begins(head, 0xFE, 0xFF)) {
      return true;
    }
    for (byte each : head) {
      if (each >= 0 && each < ' ' && each != '\t' && each != '\n' && each != '\r') {
        return false;
      }
    }
    return true;
  }
}
