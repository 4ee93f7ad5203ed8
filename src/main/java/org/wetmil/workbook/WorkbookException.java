package org.wetmil.workbook;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;

/**
 * Something about the user's file keeps us from reading it or from writing the result. The message
 * is one sentence for the user: which file, what is wrong with it, what to do. The cause is kept
 * for whoever has to look deeper and is never shown.
 *
 * <p>Faults of this program are other exceptions, so that the two never mix.
 */
public abstract sealed class WorkbookException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int LONGEST = 200;

  private WorkbookException(Path file, String sentence, Throwable cause) {
    super(file + ": " + sentence, cause);
  }

  /** What stands in a file may be as long as a book. */
  private static String shortened(String quoted) {
    return quoted.length() <= LONGEST ? quoted : quoted.substring(0, LONGEST) + "...";
  }

  /** The file is something else altogether. */
  public static final class NotAWorkbook extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public NotAWorkbook(Path file, String whatItIs) {
      super(file, whatItIs + "; an Excel workbook (.xlsx) is needed.", null);
    }
  }

  /** A workbook of another format, which a spreadsheet program can save as .xlsx. */
  public static final class OtherFormat extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public OtherFormat(Path file, String format) {
      super(
          file,
          format + " cannot be read; open it in a spreadsheet program and save it as .xlsx.",
          null);
    }
  }

  /** The workbook needs a password to be opened. */
  public static final class Encrypted extends WorkbookException {
    private static final long serialVersionUID = 1L;

    /**
     * @param tried whether passwords were given that do not open it
     */
    public Encrypted(Path file, boolean tried) {
      super(
          file,
          tried
              ? "no line of the password file opens this workbook; check the password, its capitals"
                  + " and the spaces around it."
              : "the workbook is protected with a password; write it into a file, and name that with"
                  + " --password-file.",
          null);
    }
  }

  /** A part of the package is missing or cannot be understood. */
  public static final class Damaged extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public Damaged(Path file, String part, String what, Throwable cause) {
      super(
          file,
          "the workbook is damaged at "
              + shortened(part)
              + " ("
              + shortened(what)
              + "); open it in a spreadsheet program, let it repair the file and save it again.",
          cause);
    }

    public Damaged(Path file, String part, String what) {
      this(file, part, what, null);
    }
  }

  /** The file is larger than a bid can be; it may be made to exhaust whoever opens it. */
  public static final class TooLarge extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public TooLarge(Path file, String what) {
      super(file, what + "; split the workbook, or check where the file came from.", null);
    }
  }

  /** The file is not there, or may not be read. */
  public static final class Unreadable extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public Unreadable(Path file, String why, Throwable cause) {
      super(file, why, cause);
    }

    /** The sentence for a file that cannot be opened or read at all. */
    public static Unreadable of(Path file, IOException e) {
      String why;
      if (e instanceof NoSuchFileException || Files.notExists(file)) {
        why = "there is no such file; check the name and the folder.";
      } else if (Files.isDirectory(file)) {
        why = "this is a folder; name a workbook in it.";
      } else if (e instanceof AccessDeniedException || !Files.isReadable(file)) {
        why = "the file may not be read; check its permissions.";
      } else {
        why = "the file cannot be read; close it in other programs and try again.";
      }
      return new Unreadable(file, why, e);
    }
  }

  /** The result may not or cannot be written. */
  public static sealed class Unwritable extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public Unwritable(Path file, String why, Throwable cause) {
      super(file, why, cause);
    }
  }

  /** A file stands where the result would. */
  public static final class ThereAlready extends Unwritable {
    private static final long serialVersionUID = 1L;
    private static final String THERE = "the file is there already; ";

    private final String file;

    public ThereAlready(Path file) {
      super(file, THERE + "add --force to write over it, or name another with --out.", null);
      this.file = file.toString();
    }

    /** The sentence of a command that can also number its results. */
    public String orNumbered() {
      return file
          + ": "
          + THERE
          + "add --number to keep it beside the new one or --force to write over it, or name"
          + " another with --out.";
    }
  }

  /** The workbook holds no bid that could be read. */
  public static final class NoBid extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public NoBid(Path file, String what) {
      super(file, what, null);
    }
  }

  /** What was asked about is no part of a bid line. */
  public static final class NoLine extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public NoLine(Path file, String what) {
      super(file, what, null);
    }
  }

  /** The workbook holds no table of items and no settings. */
  public static final class NoItems extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public NoItems(Path file, Collection<String> sheets) {
      super(
          file,
          "no sheet has the headings Item and Coating in one row, or is called Settings; its sheets"
              + " are "
              + String.join(", ", sheets)
              + ".",
          null);
    }
  }

  /** The workbook holds no list of rooms that could be read. */
  public static final class NoRooms extends WorkbookException {
    private static final long serialVersionUID = 1L;

    public NoRooms(Path file, String what) {
      super(file, what, null);
    }
  }
}
