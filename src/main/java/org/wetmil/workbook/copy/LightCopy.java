package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/**
 * Writes a copy of a workbook with cells added, without rebuilding a cell of the original.
 *
 * <p>The library that knows styles, notes and charts would hold every cell in memory and write each
 * anew; it therefore works on a copy without rows, and the rows are streamed from the original into
 * the result. One way for every size of workbook.
 */
public final class LightCopy {
  /** Of 0 to 9; within 3 per cent of the usual 6 in size, in a sixth less time. */
  private static final int COMPRESSION = 5;

  static {
    LibrarySettings.apply();
  }

  private final PackageReader original;
  private final OutputFile files;

  private LightCopy(PackageReader original, OutputFile files) {
    this.original = original;
    this.files = files;
  }

  /** Writes a copy to a file that is not there yet. */
  public static void write(Path input, Path output, Shaper shaper) {
    write(input, output, false, shaper);
  }

  /**
   * Writes a copy. The input is only read. Whatever fails, the output is left as it was and no
   * temporary file stays.
   *
   * @param overwrite whether a file that is there already may be replaced
   * @throws WorkbookException when the input cannot be read or the output cannot be written
   */
  public static void write(Path input, Path output, boolean overwrite, Shaper shaper) {
    write(input, Passwords.NONE, output, overwrite, shaper);
  }

  /**
   * The same for a workbook that may be protected: its copy is protected with the same password,
   * and nothing of it is on the disk without, not even for a moment.
   */
  public static void write(
      Path input, Passwords passwords, Path output, boolean overwrite, Shaper shaper) {
    try (PackageReader original = PackageReader.open(input, passwords);
        OutputFile files = OutputFile.claim(input, output, overwrite)) {
      requireExtension(output, original.kind());
      if (original.isStrict()) {
        throw new WorkbookException.OtherFormat(input, "a strict Open XML workbook");
      }
      new LightCopy(original, files).write(shaper);
    }
  }

  /** A program refuses a workbook whose name promises macros it has not, and the reverse. */
  private static void requireExtension(Path output, WorkbookKind kind) {
    String extension = kind.outputExtension();
    if (!output.toString().toLowerCase(Locale.ROOT).endsWith(extension)) {
      throw new WorkbookException.Unwritable(
          output, "a copy of this workbook needs a name that ends in " + extension + ".", null);
    }
  }

  private void write(Shaper shaper) {
    Scratch emptied = scratch();
    int strings;
    try (OutputStream out = emptied.write()) {
      strings = EmptiedCopy.write(original, out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    Scratch shapedCopy = scratch();
    Shaped shaped = shape(emptied, shapedCopy, shaper);
    Path result = files.temporary();
    try (PackageReader from = read(shapedCopy);
        ZipWriter out = new ZipWriter(result(result), COMPRESSION)) {
      new FinalMerge(original, strings, from, out, shaper::hides)
          .write(shaped.kept(), shaped.edits(), shaped.added(), shaped.stamps());
    }
    shaper.beforeItIsPublished();
    files.publish(result);
  }

  /** What cannot be read in the library's copy could not be understood in the original. */
  private PackageReader read(Scratch copy) {
    try {
      return copy.read();
    } catch (WorkbookException e) {
      throw damaged(e);
    }
  }

  private Scratch scratch() {
    return original.password().isPresent()
        ? Scratch.inMemory(original.zip().file(), original.kind())
        : Scratch.on(files);
  }

  /** Where the result goes; under its protection where it has one. */
  private OutputStream result(Path file) {
    return original.password().isEmpty()
        ? files.open(file)
        : new ProtectedOutput(files.open(file), original.password().get());
  }

  private record Shaped(
      Map<String, SheetPart> kept,
      Map<String, SheetEdit> edits,
      Map<String, NewRows> added,
      Map<String, Stamps> stamps) {}

  private Shaped shape(Scratch emptied, Scratch shaped, Shaper shaper) {
    // Read and write, since parts are added; never closed but reverted, since closing would save.
    OPCPackage opened = openPackage(emptied);
    try {
      LeanWorkbook workbook = openWorkbook(opened);
      IdentityHashMap<XSSFSheet, SheetPart> before = originals(workbook);
      if (original.kind() == WorkbookKind.XLTX) {
        workbook.setWorkbookType(XSSFWorkbookType.XLSX);
      } else if (original.kind() == WorkbookKind.XLTM) {
        workbook.setWorkbookType(XSSFWorkbookType.XLSM);
      }
      Map<String, SheetEdit> edits = byName(edits(workbook, shaper));
      Map<String, SheetPart> kept = kept(workbook, before);
      requireKept(edits, kept);
      save(workbook, shaped);
      return new Shaped(kept, edits, workbook.byPart(), workbook.stampsByPart());
    } finally {
      opened.revert();
    }
  }

  private List<SheetEdit> edits(LeanWorkbook workbook, Shaper shaper) {
    try {
      return shaper.shape(workbook);
    } catch (RuntimeException | StackOverflowError e) {
      // What the library throws says that the package contradicts itself, such as a part that
      // nothing refers to under the name that a new part needs; all else is a fault of the shaper.
      if (LibraryStumble.is(e)) {
        throw damaged(e);
      }
      throw e;
    }
  }

  private OPCPackage openPackage(Scratch emptied) {
    try {
      return emptied.opcPackage();
    } catch (IOException | OpenXML4JException | RuntimeException | StackOverflowError e) {
      throw damaged(e);
    }
  }

  private LeanWorkbook openWorkbook(OPCPackage opened) {
    try {
      return new LeanWorkbook(opened);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw damaged(e);
    }
  }

  private void save(XSSFWorkbook workbook, Scratch shaped) {
    try (OutputStream out = shaped.write()) {
      LibrarySave.write(workbook, out);
    } catch (WorkbookException e) {
      throw e;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw damaged(e);
    }
  }

  /** The library does not say which part it stumbled over, so the parts are read once more. */
  private WorkbookException damaged(Throwable e) {
    ZipPackage zip = original.zip();
    for (String part : zip.names()) {
      if (part.endsWith(".xml") || part.endsWith(".rels")) {
        try {
          zip.xml(part, XmlIn::end);
        } catch (WorkbookException found) {
          found.addSuppressed(e);
          return found;
        }
      }
    }
    return new WorkbookException.Damaged(
        zip.file(), "a part other than its rows", "it contradicts the rest", e);
  }

  /** The library's sheet for each original worksheet, by identity: a name may be used again. */
  private IdentityHashMap<XSSFSheet, SheetPart> originals(XSSFWorkbook workbook) {
    IdentityHashMap<XSSFSheet, SheetPart> sheets = new IdentityHashMap<>();
    for (SheetPart sheet : original.sheets()) {
      XSSFSheet found = workbook.getSheet(sheet.name());
      if (found == null || sheets.put(found, sheet) != null) {
        throw new WorkbookException.Damaged(
            original.zip().file(), "sheet \"" + sheet.name() + "\"", "it cannot be told apart");
      }
    }
    return sheets;
  }

  private static Map<String, SheetPart> kept(
      XSSFWorkbook workbook, IdentityHashMap<XSSFSheet, SheetPart> before) {
    Map<String, SheetPart> kept = new HashMap<>();
    for (Sheet sheet : workbook) {
      XSSFSheet each = (XSSFSheet) sheet;
      SheetPart part = before.get(each);
      if (part != null) {
        kept.put(Parts.key(each.getPackagePart().getPartName().getName()), part);
      }
    }
    return kept;
  }

  private static Map<String, SheetEdit> byName(List<SheetEdit> edits) {
    Map<String, SheetEdit> byName = new HashMap<>();
    for (SheetEdit edit : edits) {
      if (byName.put(edit.sheet(), edit) != null) {
        throw new IllegalArgumentException("two edits for the sheet " + edit.sheet());
      }
    }
    return byName;
  }

  private static void requireKept(Map<String, SheetEdit> edits, Map<String, SheetPart> kept) {
    for (String name : edits.keySet()) {
      if (kept.values().stream().noneMatch(sheet -> sheet.name().equals(name))) {
        throw new IllegalArgumentException("an edit for " + name + ", which is no original sheet");
      }
    }
  }
}
