package org.wetmil.workbook.copy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.wetmil.workbook.opc.OpenedWorkbook;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.PackageReader;

/** A package that lives while a copy is made: in a temporary file, or in memory alone. */
interface Scratch {
  OutputStream write();

  /** The package for the library to change; never to be closed, which would save it. */
  OPCPackage opcPackage() throws OpenXML4JException, IOException;

  PackageReader read();

  /** In a temporary file beside the output. */
  static Scratch on(OutputFile files) {
    Path temporary = files.temporary();
    return new Scratch() {
      @Override
      public OutputStream write() {
        return files.open(temporary);
      }

      @Override
      public OPCPackage opcPackage() throws OpenXML4JException {
        return OPCPackage.open(temporary.toFile(), PackageAccess.READ_WRITE);
      }

      @Override
      public PackageReader read() {
        return PackageReader.open(temporary, Passwords.NONE);
      }
    };
  }

  /**
   * Nowhere on a disk, for what is protected.
   *
   * @param output that messages name
   */
  static Scratch inMemory(Path output, WorkbookKind kind) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    return new Scratch() {
      @Override
      public OutputStream write() {
        return bytes;
      }

      @Override
      public OPCPackage opcPackage() throws OpenXML4JException, IOException {
        return OPCPackage.open(new ByteArrayInputStream(bytes.toByteArray()));
      }

      @Override
      public PackageReader read() {
        ZipPackage zip = ZipPackage.open(output, bytes.toByteArray());
        return PackageReader.of(new OpenedWorkbook(zip, kind, Optional.empty()));
      }
    };
  }
}
