package org.wetmil.jobs.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * What tells from outside that a file was written to.
 *
 * @param bytes length of the file
 * @param changed when it was last written
 */
record Stamp(long bytes, FileTime changed) {

  /** Empty when the file is gone. */
  static Optional<Stamp> of(Path file) {
    try {
      BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(new Stamp(seen.size(), seen.lastModifiedTime()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
