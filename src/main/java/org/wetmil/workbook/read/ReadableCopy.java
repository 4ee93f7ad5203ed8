package org.wetmil.workbook.read;

import java.nio.file.Path;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.OpenedWorkbook;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.stream.PackageReader;

/**
 * A workbook in a form that can be read: itself, or of one of Excel 97-2003 a copy in the newer
 * format, in memory. For those who only read: what is filled must not change its format on the way.
 */
public final class ReadableCopy {
  private final Path file;
  private final Passwords passwords;
  private final byte[] newer;

  private ReadableCopy(Path file, Passwords passwords, byte[] newer) {
    this.file = file;
    this.passwords = passwords;
    this.newer = newer;
  }

  /**
   * @throws WorkbookException when it cannot be read as a workbook of Excel 97-2003 that it is
   */
  public static ReadableCopy of(Path file) {
    return WorkbookKind.of(file) == WorkbookKind.XLS
        ? new ReadableCopy(file, Passwords.NONE, OldFormat.newer(file))
        : itself(file, Passwords.NONE);
  }

  /** Without looking for an older format. */
  static ReadableCopy itself(Path file, Passwords passwords) {
    return new ReadableCopy(file, passwords, null);
  }

  /** The user's file, for messages. */
  public Path file() {
    return file;
  }

  /** Opens it; messages name the user's file. */
  public PackageReader open() {
    return newer == null
        ? PackageReader.open(file, passwords)
        : PackageReader.of(OpenedWorkbook.inMemory(file, newer));
  }
}
