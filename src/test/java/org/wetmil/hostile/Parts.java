package org.wetmil.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The parts of a workbook, to be damaged and packed again; a name may stand there twice. */
public final class Parts {
  /** A part by the name of its zip entry. */
  public record Part(String name, byte[] bytes) {
    public String text() {
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  private final List<Part> parts;

  private Parts(List<Part> parts) {
    this.parts = new ArrayList<>(parts);
  }

  /** Those of a workbook. */
  public static Parts of(Path workbook) {
    List<Part> parts = new ArrayList<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.add(new Part(entry.getName(), in.readAllBytes()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Parts(parts);
  }

  public Parts copy() {
    return new Parts(parts);
  }

  public List<Part> all() {
    return List.copyOf(parts);
  }

  /** The first part whose name ends so. */
  public Part ending(String name) {
    return parts.stream().filter(part -> part.name().endsWith(name)).findFirst().orElseThrow();
  }

  /** Adds a part at the end. */
  public Parts add(String name, byte[] bytes) {
    parts.add(new Part(name, bytes));
    return this;
  }

  public Parts remove(Part part) {
    parts.remove(part);
    return this;
  }

  /** Puts a part in another's place. */
  public Parts replace(Part old, String name, byte[] bytes) {
    parts.set(parts.indexOf(old), new Part(name, bytes));
    return this;
  }

  /** Gives a part another text. */
  public Parts replace(Part old, String text) {
    return replace(old, old.name(), text.getBytes(StandardCharsets.UTF_8));
  }

  /** Any part. */
  Part any(Random random) {
    return parts.get(random.nextInt(parts.size()));
  }

  /** Any part whose name matches; any at all when none does. */
  Part any(Random random, String pattern) {
    List<Part> found = parts.stream().filter(part -> part.name().matches(pattern)).toList();
    return found.isEmpty() ? any(random) : found.get(random.nextInt(found.size()));
  }

  /** The bytes of the zip file; the same parts give the same bytes. */
  public byte[] zip() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Set<String> names = new HashSet<>();
    List<String> twice = new ArrayList<>();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Part part : parts) {
        String name = part.name();
        if (names.contains(name)) {
          // this class writes no name twice, so that it is made one of equal length first
          name = "\u007f".repeat(name.getBytes(StandardCharsets.UTF_8).length);
          if (names.contains(name)) {
            continue;
          }
          twice.add(part.name());
        }
        names.add(name);
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(part.bytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    byte[] whole = bytes.toByteArray();
    twice.forEach(name -> rename(whole, name));
    return whole;
  }

  private static void rename(byte[] zip, String name) {
    byte[] to = name.getBytes(StandardCharsets.UTF_8);
    int run = 0;
    for (int i = 0; i < zip.length; i++) {
      run = zip[i] == 0x7f ? run + 1 : 0;
      if (run == to.length) {
        System.arraycopy(to, 0, zip, i + 1 - run, run);
        run = 0;
      }
    }
  }
}
