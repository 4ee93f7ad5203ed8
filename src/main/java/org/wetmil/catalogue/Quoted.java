package org.wetmil.catalogue;

/** What a cell says, within a sentence. */
public final class Quoted {
  private static final int LONGEST = 40;

  private Quoted() {}

  /**
   * On one line, not too long, and in quotes; in square brackets where it holds quotes itself, as
   * inches do, so that what is the cell's and what is ours is plain: {@code [22' 6"]}.
   */
  public static String of(String raw) {
    String plain = raw.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    String shown = plain.length() > LONGEST ? plain.substring(0, LONGEST).strip() + "..." : plain;
    return shown.contains("\"") ? "[" + shown + "]" : "\"" + shown + "\"";
  }
}
