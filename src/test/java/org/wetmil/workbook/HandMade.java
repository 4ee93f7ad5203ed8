package org.wetmil.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a workbook part by part, for what no library would write. */
public final class HandMade {
  public static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  /** A workbook of one sheet "Bid" with the text given for its sheet part. */
  public HandMade(String sheetXml) {
    part(
        "[Content_Types].xml",
        """
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
        <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
        <Default Extension="xml" ContentType="application/xml"/>
        <Override PartName="/xl/workbook.xml" ContentType="%1$s.sheet.main+xml"/>
        <Override PartName="/xl/worksheets/sheet1.xml" ContentType="%1$s.worksheet+xml"/>
        <Override PartName="/xl/sharedStrings.xml" ContentType="%1$s.sharedStrings+xml"/>
        <Override PartName="/xl/styles.xml" ContentType="%1$s.styles+xml"/>
        </Types>"""
            .formatted(TYPES));
    part(
        "_rels/.rels",
        """
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
        <Relationship Id="rId1" Type="%s/officeDocument" Target="xl/workbook.xml"/>
        </Relationships>"""
            .formatted(RELATIONS));
    part(
        "xl/workbook.xml",
        """
        <workbook xmlns="%s" xmlns:r="%s"><sheets><sheet name="Bid" sheetId="1" r:id="rId1"/></sheets>
        </workbook>"""
            .formatted(MAIN, RELATIONS));
    part(
        "xl/_rels/workbook.xml.rels",
        """
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
        <Relationship Id="rId1" Type="%s/worksheet" Target="worksheets/sheet1.xml"/>
        </Relationships>"""
            .formatted(RELATIONS));
    part("xl/worksheets/sheet1.xml", sheetXml);
  }

  /** A sheet part with these rows. */
  public static String sheet(String rows) {
    return "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>";
  }

  /** Adds the table of shared strings, each given as the inside of its element. */
  public HandMade strings(String... items) {
    StringBuilder sst = new StringBuilder("<sst xmlns=\"" + MAIN + "\">");
    for (String item : items) {
      sst.append("<si>").append(item).append("</si>");
    }
    return related("sharedStrings", sst.append("</sst>").toString());
  }

  /** Adds the styles, given as the inside of their element. */
  public HandMade styles(String xml) {
    return related("styles", "<styleSheet xmlns=\"" + MAIN + "\">" + xml + "</styleSheet>");
  }

  private HandMade related(String type, String xml) {
    part("xl/" + type + ".xml", xml);
    return replace(
        "xl/_rels/workbook.xml.rels",
        "</Relationships>",
        "<Relationship Id=\"%1$s\" Type=\"%2$s/%1$s\" Target=\"%1$s.xml\"/></Relationships>"
            .formatted(type, RELATIONS));
  }

  /** Sets a part. */
  public HandMade part(String name, String text) {
    parts.put(name, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** The names of all parts. */
  public List<String> names() {
    return List.copyOf(parts.keySet());
  }

  /** The text of a part. */
  public String text(String name) {
    return new String(parts.get(name), StandardCharsets.UTF_8);
  }

  /** Leaves a part out. */
  public HandMade without(String name) {
    parts.remove(name);
    return this;
  }

  /** Replaces text within a part. */
  public HandMade replace(String name, String old, String with) {
    String text = text(name);
    if (!text.contains(old)) {
      throw new IllegalArgumentException(name + " does not contain " + old);
    }
    return part(name, text.replace(old, with));
  }

  /** Replaces text in all parts. */
  public HandMade replaceEverywhere(String old, String with) {
    parts.replaceAll(
        (name, bytes) ->
            new String(bytes, StandardCharsets.UTF_8)
                .replace(old, with)
                .getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** Writes the file. */
  public Path write(Path file) {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file;
  }
}
