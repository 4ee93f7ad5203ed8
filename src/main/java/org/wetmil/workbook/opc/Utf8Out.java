package org.wetmil.workbook.opc;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes characters as UTF-8 through one buffer. Of a workbook nearly all are ASCII, which the
 * JDK's writers take through three buffers and a general encoder.
 */
final class Utf8Out {
  /** Bytes of a character, and of what may have to be said before it. */
  private static final int LONGEST = 5;

  private static final int CHUNK = 512;

  private final OutputStream out;
  private final byte[] buffer = new byte[1 << 15];
  private final char[] chars = new char[CHUNK];
  private int size;
  private char high;

  Utf8Out(OutputStream out) {
    this.out = out;
  }

  void write(String text) {
    for (int from = 0; from < text.length(); from += CHUNK) {
      int to = Math.min(text.length(), from + CHUNK);
      text.getChars(from, to, chars, 0);
      write(chars, 0, to - from);
    }
  }

  /** Writes bytes that are UTF-8 already, between two whole characters. */
  void write(byte[] text) {
    if (text.length > buffer.length - LONGEST - size) {
      pass();
    }
    if (high != 0 || text.length > buffer.length - LONGEST) {
      write(new String(text, StandardCharsets.UTF_8));
      return;
    }
    System.arraycopy(text, 0, buffer, size, text.length);
    size += text.length;
  }

  void write(char[] text, int from, int length) {
    int end = from + length;
    int at = from;
    while (at < end) {
      if (size > buffer.length - 2 * LONGEST) {
        pass();
      }
      int room = Math.min(end, at + buffer.length - size - LONGEST);
      if (high == 0) {
        at = ascii(text, at, room);
      }
      if (at < room) {
        other(text[at++]);
      }
    }
  }

  /** Passes ASCII on, up to another character; through locals, since it is for every character. */
  private int ascii(char[] text, int from, int to) {
    byte[] into = buffer;
    int next = size;
    int at = from;
    while (at < to) {
      char c = text[at];
      if (c >= 0x80) {
        break;
      }
      into[next++] = (byte) c;
      at++;
    }
    size = next;
    return at;
  }

  /** The two halves of a character can come in two calls. */
  private void other(char c) {
    if (high != 0) {
      char first = high;
      high = 0;
      if (Character.isLowSurrogate(c)) {
        int point = Character.toCodePoint(first, c);
        put(0xF0 | (point >> 18));
        put(0x80 | ((point >> 12) & 0x3F));
        put(0x80 | ((point >> 6) & 0x3F));
        put(0x80 | (point & 0x3F));
        return;
      }
      put('?');
    }
    if (Character.isHighSurrogate(c)) {
      high = c;
    } else if (Character.isLowSurrogate(c)) {
      put('?');
    } else if (c < 0x80) {
      put(c);
    } else if (c < 0x800) {
      put(0xC0 | (c >> 6));
      put(0x80 | (c & 0x3F));
    } else {
      put(0xE0 | (c >> 12));
      put(0x80 | ((c >> 6) & 0x3F));
      put(0x80 | (c & 0x3F));
    }
  }

  private void put(int value) {
    buffer[size++] = (byte) value;
  }

  private void pass() {
    try {
      out.write(buffer, 0, size);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    size = 0;
  }

  /** Passes everything on. */
  void flush() {
    if (high != 0) {
      high = 0;
      put('?');
    }
    pass();
    try {
      out.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
