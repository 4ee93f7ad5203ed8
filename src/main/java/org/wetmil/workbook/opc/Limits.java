package org.wetmil.workbook.opc;

import org.wetmil.workbook.WorkbookException;

/**
 * What a package may weigh. A file of a few kilobytes can inflate to gigabytes, by mischief or by a
 * broken exporter; these bounds are far above any bid and far below what would exhaust a desktop.
 */
public final class Limits {
  /** Parts in a package. A bid has 10 to 60, one with many pictures a few hundred. */
  public static final int MAX_ENTRIES = 20_000;

  /** Bytes of all parts together when inflated: a sheet of 1,000,000 rows has about 1 GB. */
  public static final long MAX_INFLATED_BYTES = 4L << 30;

  /** Bytes of a part other than a worksheet that a library has to hold in memory as a tree. */
  public static final long MAX_TREE_BYTES = 256L << 20;

  /**
   * How many times larger than its compressed form a part may be. Deflate ends at about 1,030;
   * sheets of repeated blank rows reach 100.
   */
  public static final int MAX_INFLATE_RATIO = 400;

  /** So much more any part may be: it can do no harm, however well it was packed. */
  public static final long RATIO_FREE_BYTES = 16L << 20;

  /** Elements of XML within one another. Charts and drawings reach 40. */
  public static final int MAX_XML_DEPTH = 1_000;

  private Limits() {}

  /** What a part may be when inflated. */
  static long mostInflated(long packedBytes) {
    return RATIO_FREE_BYTES + MAX_INFLATE_RATIO * Math.max(0, packedBytes);
  }

  /**
   * Refuses a part that would fill the memory.
   *
   * @throws WorkbookException.TooLarge when it is larger than {@link #MAX_TREE_BYTES}
   */
  public static void requireTree(ZipPackage zip, String part) {
    if (zip.size(part) > MAX_TREE_BYTES) {
      throw new WorkbookException.TooLarge(
          zip.file(), part + " holds more than " + (MAX_TREE_BYTES >> 20) + " MB");
    }
  }
}
