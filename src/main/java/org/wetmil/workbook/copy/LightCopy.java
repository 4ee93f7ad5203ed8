package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/**
 * Writes a copy of a workbook with cells added, without rebuilding a cell of the original.
 *
 * <p>The library that knows styles, notes and charts would hold every cell in memory and write each
 * anew; it therefore works on a copy without rows, and the rows are streamed from the original into
 * the result. One way for every size of workbook.
 *
 * <p>A copy is begun, and its library's copy is opened on a thread of its own, while the bid can be
 * computed: a tenth of the time of a small bid.
 */
public final class LightCopy implements AutoCloseable {
  /** Of 0 to 9; within 3 per cent of the usual 6 in size, in a sixth less time. */
  private static final int COMPRESSION = 5;

  static {
    LibrarySettings.apply();
  }

  private final PackageReader original;
  private final OutputFile files;
  private final LibraryCopy opening;

  private LightCopy(PackageReader original, OutputFile files) {
    this.original = original;
    this.files = files;
    this.opening = new LibraryCopy(original, scratch());
  }

  /**
   * Begins a copy. Until it is written or closed, the caller must leave the library alone, whose
   * classes two threads cannot set up together.
   *
   * <p>The input is only read. Whatever fails, the output is left as it was and no temporary file
   * stays. Of a protected workbook the copy is protected with the same password, and nothing of it
   * is on the disk without, not even for a moment.
   *
   * @param passwords that may open the input
   * @param kept other files that must stay as they are
   * @param overwrite whether a file that is there already may be replaced
   * @throws WorkbookException when the input cannot be read or the output cannot be written
   */
  public static LightCopy begin(
      Path input, Passwords passwords, List<Path> kept, Path output, boolean overwrite) {
    PackageReader original = PackageReader.open(input, passwords);
    try {
      requireExtension(output, original.kind());
      if (original.isStrict()) {
        throw new WorkbookException.OtherFormat(input, "a strict Open XML workbook");
      }
      List<Path> inputs = Stream.concat(Stream.of(input), kept.stream()).toList();
      return begin(original, OutputFile.claim(inputs, output, overwrite));
    } catch (RuntimeException | Error e) {
      original.close();
      throw e;
    }
  }

  private static LightCopy begin(PackageReader original, OutputFile files) {
    try {
      return new LightCopy(original, files);
    } catch (RuntimeException | Error e) {
      // as where the system has no thread to give
      files.close();
      throw e;
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

  /** The workbook that is copied. */
  public Path input() {
    return original.zip().file();
  }

  /**
   * Writes the copy, once.
   *
   * @throws WorkbookException when the input cannot be understood or the output cannot be written
   */
  public void write(Shaper shaper) {
    Shaped shaped = shape(shaper);
    Path result = files.temporary();
    try (PackageReader from = read(shaped.copy());
        ZipWriter out = new ZipWriter(result(result), COMPRESSION)) {
      new FinalMerge(original, shaped.strings(), from, out, shaper::hides)
          .write(shaped.kept(), shaped.edits(), shaped.added(), shaped.stamps());
    }
    shaper.beforeItIsPublished();
    files.publish(result);
  }

  @Override
  public void close() {
    try (original) {
      try (files) {
        opening.close();
      }
    }
  }

  /** What cannot be read in the library's copy could not be understood in the original. */
  private PackageReader read(Scratch copy) {
    try {
      return copy.read();
    } catch (WorkbookException e) {
      throw CopyDamage.found(original.zip(), e);
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
      Scratch copy,
      int strings,
      Map<String, SheetPart> kept,
      Map<String, SheetEdit> edits,
      Map<String, NewRows> added,
      Map<String, Stamps> stamps) {}

  private Shaped shape(Shaper shaper) {
    LibraryCopy.Opened emptied = opening.take();
    try {
      LeanWorkbook workbook = emptied.workbook();
      IdentityHashMap<XSSFSheet, SheetPart> before = originals(workbook);
      if (original.kind() == WorkbookKind.XLTX) {
        workbook.setWorkbookType(XSSFWorkbookType.XLSX);
      } else if (original.kind() == WorkbookKind.XLTM) {
        workbook.setWorkbookType(XSSFWorkbookType.XLSM);
      }
      Map<String, SheetEdit> edits = byName(edits(workbook, shaper));
      Map<String, SheetPart> kept = kept(workbook, before);
      requireKept(edits, kept);
      Scratch shaped = scratch();
      save(workbook, shaped);
      return new Shaped(
          shaped, emptied.strings(), kept, edits, workbook.byPart(), workbook.stampsByPart());
    } finally {
      emptied.opened().revert();
    }
  }

  private List<SheetEdit> edits(LeanWorkbook workbook, Shaper shaper) {
    try {
      return shaper.shape(workbook);
    } catch (RuntimeException | StackOverflowError e) {
      // What the library throws says that the package contradicts itself, such as a part that
      // nothing refers to under the name that a new part needs; all else is a fault of the shaper.
      if (LibraryStumble.is(e)) {
        throw CopyDamage.found(original.zip(), e);
      }
      throw e;
    }
  }

  private void save(XSSFWorkbook workbook, Scratch shaped) {
    try (OutputStream out = shaped.write()) {
      LibrarySave.write(workbook, out);
    } catch (WorkbookException e) {
      throw e;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw CopyDamage.found(original.zip(), e);
    }
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
