package org.wetmil.workbook.read;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.stream.PackageReader;

/**
 * A workbook in a form that can be read: itself, or of one of Excel 97-2003 a copy in the newer
 * format, which goes when this is closed. For those who only read: what is filled must not change
 * its format on the way.
 */
public final class ReadableCopy implements Closeable {
  private final Path file;
  private final Path content;

  private ReadableCopy(Path file, Path content) {
    this.file = file;
    this.content = content;
  }

  /**
   * @throws WorkbookException when it cannot be read as a workbook of Excel 97-2003 that it is
   */
  public static ReadableCopy of(Path file) {
    if (WorkbookKind.of(file) != WorkbookKind.XLS) {
      return itself(file);
    }
    Path copy = null;
    try {
      copy = Files.createTempFile("wetmil-", ".xlsx");
      OldFormat.copy(file, copy);
      return new ReadableCopy(file, copy);
    } catch (IOException e) {
      delete(copy);
      throw WorkbookException.Unreadable.of(file, e);
    } catch (RuntimeException e) {
      delete(copy);
      throw e;
    }
  }

  /** Without looking for an older format. */
  static ReadableCopy itself(Path file) {
    return new ReadableCopy(file, file);
  }

  /** The user's file, for messages. */
  public Path file() {
    return file;
  }

  /** What to read. */
  public Path content() {
    return content;
  }

  /** Opens it; messages name the user's file. */
  public PackageReader open() {
    return PackageReader.open(content, file);
  }

  @Override
  public void close() {
    if (!content.equals(file)) {
      delete(content);
    }
  }

  private static void delete(Path copy) {
    try {
      if (copy != null) {
        Files.deleteIfExists(copy);
      }
    } catch (IOException e) {
      copy.toFile().deleteOnExit();
    }
  }
}
