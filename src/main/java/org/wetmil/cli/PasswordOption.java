package org.wetmil.cli;

import java.nio.file.Path;
import org.wetmil.workbook.opc.Passwords;
import picocli.CommandLine.Option;

/** The option that names a file of passwords. */
final class PasswordOption {
  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = "A file with passwords, one a line, for workbooks that are protected.")
  private Path file;

  Passwords read() {
    return file == null ? Passwords.NONE : Passwords.in(file);
  }
}
