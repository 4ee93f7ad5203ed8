package org.wetmil.workbook.opc;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A workbook opened for reading, its protection taken off where it has any.
 *
 * @param password that opened it, and that a copy is to be protected with
 */
public record OpenedWorkbook(ZipPackage zip, WorkbookKind kind, Optional<String> password) {

  /**
   * Opens a workbook.
   *
   * @throws org.wetmil.workbook.WorkbookException when it is none, of a kind that cannot be read,
   *     or none of the passwords opens it
   */
  public static OpenedWorkbook open(Path file, Passwords passwords) {
    WorkbookKind outside = WorkbookKind.of(file);
    if (outside != WorkbookKind.ENCRYPTED) {
      WorkbookKind kind = WorkbookKind.require(file, outside);
      return new OpenedWorkbook(ZipPackage.open(file), kind, Optional.empty());
    }
    Protection.Opened opened = Protection.open(file, passwords);
    return inMemory(file, opened.bytes(), Optional.of(opened.password()));
  }

  /**
   * Opens the bytes of a workbook.
   *
   * @param file that they came from, for messages
   */
  public static OpenedWorkbook inMemory(Path file, byte[] bytes) {
    return inMemory(file, bytes, Optional.empty());
  }

  private static OpenedWorkbook inMemory(Path file, byte[] bytes, Optional<String> password) {
    ZipPackage zip = ZipPackage.open(file, bytes);
    try {
      return new OpenedWorkbook(zip, WorkbookKind.require(zip), password);
    } catch (RuntimeException e) {
      zip.close();
      throw e;
    }
  }
}
