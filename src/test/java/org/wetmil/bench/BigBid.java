package org.wetmil.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * An invented bid of any number of lines, written as spreadsheet programs write one: shared
 * strings, an address on every cell, no results to compute. Four lines a room, forty rooms a floor;
 * one line in twenty plans a tip that is too coarse, which is a finding.
 */
public final class BigBid {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  private static final String[] HEADINGS = {
    "Floor",
    "Room",
    "Surface",
    "Condition",
    "Coating",
    "Colour",
    "Length (ft)",
    "Width (ft)",
    "Height (ft)",
    "Tip"
  };
  private static final String[][] WORK = {
    {"walls", "new", "latex", "white"},
    {"ceiling", "new", "latex", "oat"},
    {"trim", "primed", "alkyd enamel", "white"},
    {"walls", "new", "primer", "white"}
  };
  private static final int ROOMS_A_FLOOR = 40;
  private static final int ONE_FINDING_IN = 20;

  private final Map<String, Integer> strings = new LinkedHashMap<>();
  private final int lines;

  private BigBid(int lines) {
    this.lines = lines;
  }

  /** Writes a bid; the same number of lines gives the same file. */
  public static Path write(Path file, int lines) {
    try (ZipOutputStream zip =
        new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file), 1 << 16))) {
      new BigBid(lines).parts(zip);
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void parts(ZipOutputStream zip) throws IOException {
    Writer out = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
    begin(zip, "[Content_Types].xml");
    out.write(
        """
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">\
        <Default Extension="rels" \
        ContentType="application/vnd.openxmlformats-package.relationships+xml"/>\
        <Override PartName="/xl/workbook.xml" ContentType="%1$s.sheet.main+xml"/>\
        <Override PartName="/xl/worksheets/sheet1.xml" ContentType="%1$s.worksheet+xml"/>\
        <Override PartName="/xl/sharedStrings.xml" ContentType="%1$s.sharedStrings+xml"/></Types>"""
            .formatted(TYPES));
    end(zip, out);
    begin(zip, "_rels/.rels");
    relations(out, "officeDocument", "xl/workbook.xml");
    end(zip, out);
    begin(zip, "xl/workbook.xml");
    out.write(
        """
        <workbook xmlns="%s" xmlns:r="%s"><sheets><sheet name="Bid lines" sheetId="1" \
        r:id="rId0"/></sheets></workbook>"""
            .formatted(MAIN, RELATIONS));
    end(zip, out);
    begin(zip, "xl/_rels/workbook.xml.rels");
    relations(out, "worksheet", "worksheets/sheet1.xml", "sharedStrings", "sharedStrings.xml");
    end(zip, out);
    begin(zip, "xl/worksheets/sheet1.xml");
    rows(out);
    end(zip, out);
    begin(zip, "xl/sharedStrings.xml");
    out.write("<sst xmlns=\"" + MAIN + "\">");
    for (String each : strings.keySet()) {
      out.write("<si><t>" + each + "</t></si>");
    }
    out.write("</sst>");
    end(zip, out);
  }

  private static void relations(Writer out, String... typesAndTargets) throws IOException {
    out.write(
        "<Relationships"
            + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < typesAndTargets.length; i += 2) {
      out.write(
          "<Relationship Id=\"rId%s\" Type=\"%s/%s\" Target=\"%s\"/>"
              .formatted(i, RELATIONS, typesAndTargets[i], typesAndTargets[i + 1]));
    }
    out.write("</Relationships>");
  }

  private void rows(Writer out) throws IOException {
    Random random = new Random(lines);
    out.write("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
    row(out, 0, (Object[]) HEADINGS);
    for (int i = 0; i < lines; i++) {
      String[] work = WORK[i % WORK.length];
      int room = i / WORK.length;
      boolean broad = i % WORK.length != 2;
      row(
          out,
          i + 1,
          "Level " + (room / ROOMS_A_FLOOR + 1),
          "Room " + (room + 1),
          work[0],
          work[1],
          work[2],
          work[3],
          8 + random.nextInt(300) / 10.0,
          broad ? 8 + random.nextInt(200) / 10.0 : null,
          8 + random.nextInt(40) / 10.0,
          i % ONE_FINDING_IN == ONE_FINDING_IN / 2 ? "531" : null);
    }
    out.write("</sheetData></worksheet>");
  }

  private void row(Writer out, int row, Object... values) throws IOException {
    out.write("<row r=\"" + (row + 1) + "\">");
    for (int column = 0; column < values.length; column++) {
      String address = (char) ('A' + column) + Integer.toString(row + 1);
      if (values[column] instanceof Number number) {
        out.write("<c r=\"" + address + "\"><v>" + number + "</v></c>");
      } else if (values[column] != null) {
        int index = strings.computeIfAbsent(values[column].toString(), text -> strings.size());
        out.write("<c r=\"" + address + "\" t=\"s\"><v>" + index + "</v></c>");
      }
    }
    out.write("</row>");
  }

  private static void begin(ZipOutputStream zip, String part) throws IOException {
    zip.putNextEntry(new ZipEntry(part));
  }

  private static void end(ZipOutputStream zip, Writer out) throws IOException {
    out.flush();
    zip.closeEntry();
  }
}
