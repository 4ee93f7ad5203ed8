package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.opc.ZipPackage;

/**
 * Shapes of a new drawing that are there again further down, copied while the file is written: the
 * library counts all shapes for each that is added, which for a drawing on each of many pages takes
 * longer than all the rest.
 */
public final class Stamps {
  private static final Pattern ANCHOR =
      Pattern.compile("<xdr:twoCellAnchor\\b.*?</xdr:twoCellAnchor>", Pattern.DOTALL);

  /** What is another in each copy: the rows that a shape stands in, and its number. */
  private static final Pattern CHANGED =
      Pattern.compile("(?<=<xdr:row>)(\\d+)|(?<=<xdr:cNvPr id=\")\\d+");

  private record Stamp(int first, int count, int down) {}

  private final List<Stamp> stamps = new ArrayList<>();

  /**
   * Adds a copy of shapes that the library has made.
   *
   * @param first of them, counted from 0 in the order in which they were made
   * @param count how many
   * @param down how many rows below the original
   */
  public void add(int first, int count, int down) {
    stamps.add(new Stamp(first, count, down));
  }

  /** Writes a drawing as the library made it, and the copies after it. */
  void write(ZipPackage from, String part, ZipWriter out) {
    String made;
    try (InputStream in = from.bytes(part)) {
      made = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    List<Shape> shapes = new ArrayList<>();
    int end = 0;
    for (Matcher each = ANCHOR.matcher(made); each.find(); end = each.end()) {
      shapes.add(new Shape(each.group()));
    }
    int after = end;
    out.bytes(
        part,
        to -> {
          to.write(made.substring(0, after).getBytes(StandardCharsets.UTF_8));
          int number = shapes.size();
          for (Stamp stamp : stamps) {
            StringBuilder copies = new StringBuilder();
            for (int i = 0; i < stamp.count(); i++) {
              shapes.get(stamp.first() + i).copy(copies, stamp.down(), ++number);
            }
            to.write(copies.toString().getBytes(StandardCharsets.UTF_8));
          }
          to.write(made.substring(after).getBytes(StandardCharsets.UTF_8));
        });
  }

  /** A shape in pieces, between which stand the numbers that are others in a copy. */
  private static final class Shape {
    private final List<String> between = new ArrayList<>();
    private final List<Integer> rows = new ArrayList<>();
    private final String end;

    private Shape(String shape) {
      int done = 0;
      for (Matcher each = CHANGED.matcher(shape); each.find(); done = each.end()) {
        between.add(shape.substring(done, each.start()));
        rows.add(each.group(1) == null ? null : Integer.valueOf(each.group(1)));
      }
      end = shape.substring(done);
    }

    private void copy(StringBuilder to, int down, int number) {
      for (int i = 0; i < rows.size(); i++) {
        Integer row = rows.get(i);
        to.append(between.get(i)).append(row == null ? number : row + down);
      }
      to.append(end);
    }
  }
}
