package org.wetmil.workbook.copy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.wetmil.workbook.opc.Protection;

/** Keeps a workbook in memory until it is whole, and then writes it protected by a password. */
final class ProtectedOutput extends ByteArrayOutputStream {
  private final OutputStream out;
  private final String password;
  private boolean closed;

  ProtectedOutput(OutputStream out, String password) {
    this.out = out;
    this.password = password;
  }

  @Override
  public void close() throws IOException {
    if (!closed) {
      closed = true;
      try (out) {
        Protection.write(toByteArray(), password, out);
      }
    }
  }
}
