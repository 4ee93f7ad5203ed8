package org.wetmil.workbook.copy;

import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.wetmil.workbook.WorkbookException;

/**
 * The file that a result becomes: there is either all of it or none. It is made under a temporary
 * name in its own folder, since only within one file system can a file be put in place at once.
 */
public final class OutputFile implements Closeable {
  /** Bytes of a name that the usual file systems take. */
  private static final int LONGEST_NAME = 255;

  private final Path output;
  private final Path target;
  private final boolean overwrite;
  private final Temporaries temporaries;

  private OutputFile(Path output, Path target, boolean overwrite) {
    this.output = output;
    this.target = target;
    this.overwrite = overwrite;
    this.temporaries = new Temporaries(target.getParent());
  }

  /**
   * Checks that a result may be written.
   *
   * @param inputs files that must stay as they are
   * @throws WorkbookException.Unwritable when the output is an input, is there already and is not
   *     to be replaced, or is in no folder that can be written
   */
  public static OutputFile claim(List<Path> inputs, Path output, boolean overwrite) {
    try {
      if (Files.isDirectory(output)) {
        throw unwritable(output, "this is a folder; move it away, or name a file with --out.");
      }
      boolean taken = Files.exists(output, LinkOption.NOFOLLOW_LINKS);
      for (Path input : inputs) {
        if (taken && Files.exists(output) && isSame(input, output)) {
          throw unwritable(
              output,
              "this is the input itself, which is never changed; name another file with --out.");
        }
      }
      if (taken && !overwrite) {
        throw new WorkbookException.ThereAlready(output);
      }
      int bytes = output.getFileName().toString().getBytes(StandardCharsets.UTF_8).length;
      if (!taken && bytes > LONGEST_NAME) {
        throw unwritable(
            output,
            "a name of %s bytes is more than the %s that disks take; name a shorter one with --out."
                .formatted(bytes, LONGEST_NAME));
      }
      // A link stays a link, and the file it leads to is replaced.
      Path target = taken ? output.toRealPath() : output.toAbsolutePath();
      requireFolder(output, target.getParent());
      return new OutputFile(output, target, overwrite);
    } catch (IOException e) {
      throw unwritable(output, e);
    }
  }

  /** An input that is not there is told by whoever reads it. */
  private static boolean isSame(Path input, Path output) throws IOException {
    return Files.exists(input) && Files.isSameFile(input, output);
  }

  private static void requireFolder(Path output, Path folder) {
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectories(folder);
      }
    } catch (FileAlreadyExistsException e) {
      throw unwritable(output, e.getFile() + " is a file, not a folder; name another with --out.");
    } catch (IOException e) {
      throw new WorkbookException.Unwritable(
          output, "its folder cannot be made (" + reason(e) + "); name another with --out.", e);
    }
    if (!Files.isWritable(folder)) {
      throw unwritable(
          output, "its folder cannot be written; name another with --out, or check permissions.");
    }
  }

  private static WorkbookException unwritable(Path output, String why) {
    return new WorkbookException.Unwritable(output, why, null);
  }

  private static WorkbookException unwritable(Path output, IOException e) {
    return new WorkbookException.Unwritable(
        output,
        e instanceof AccessDeniedException
            ? "the file cannot be written; close it in other programs or choose another folder."
            : "the file cannot be written (" + reason(e) + "); is the disk full?",
        e);
  }

  private static String reason(IOException e) {
    // the message names our temporary file, which tells the user nothing
    boolean stated = e instanceof FileSystemException named && named.getReason() != null;
    return stated ? ((FileSystemException) e).getReason() : String.valueOf(e.getMessage());
  }

  /** Names a temporary file beside the output; it goes when this is closed. */
  public Path temporary() {
    return temporaries.next();
  }

  /** Opens a temporary file; what cannot be written is said in the user's terms. */
  public OutputStream open(Path temporary) {
    try {
      return new Spoken(
          Files.newOutputStream(
              temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    } catch (IOException e) {
      throw unwritable(output, e);
    }
  }

  /** Puts a temporary file in the output's place. */
  public void publish(Path temporary) {
    try {
      if (overwrite) {
        Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
      } else {
        publishNew(temporary);
      }
    } catch (FileAlreadyExistsException e) {
      // another run was faster
      throw new WorkbookException.ThereAlready(output);
    } catch (IOException e) {
      throw unwritable(output, e);
    }
  }

  /** A second name for the file is there at once, and never takes the place of another file. */
  private void publishNew(Path temporary) throws IOException {
    try {
      Files.createLink(target, temporary);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException | UnsupportedOperationException e) {
      // a disk on which a file has one name only, such as a memory stick
      Files.move(temporary, target);
    }
  }

  @Override
  public void close() {
    try {
      temporaries.close();
    } catch (IOException e) {
      throw unwritable(output, e);
    }
  }

  private final class Spoken extends FilterOutputStream {
    private Spoken(OutputStream out) {
      super(out);
    }

    @Override
    public void write(int b) {
      try {
        out.write(b);
      } catch (IOException e) {
        throw unwritable(output, e);
      }
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
      try {
        out.write(bytes, offset, length);
      } catch (IOException e) {
        throw unwritable(output, e);
      }
    }

    @Override
    public void close() {
      try {
        out.close();
      } catch (IOException e) {
        throw unwritable(output, e);
      }
    }
  }
}
