package org.wetmil.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How the characters of a file are stored, found from its bytes: a byte order mark; else every
 * other byte zero, as UTF-16 of western text has it; else UTF-8 where all bytes fit it; else
 * Windows-1252.
 *
 * @param markBytes length of the byte order mark, 0 when there is none
 */
record TextEncoding(Charset charset, int markBytes) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final int HEAD = 4096;

  static TextEncoding of(LedgerSource source) throws IOException {
    byte[] head;
    try (InputStream in = source.open()) {
      head = in.readNBytes(HEAD);
    }
    if (begins(head, 0xEF, 0xBB, 0xBF)) {
      return new TextEncoding(StandardCharsets.UTF_8, 3);
    }
    if (begins(head, 0xFF, 0xFE)) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 2);
    }
    if (begins(head, 0xFE, 0xFF)) {
      return new TextEncoding(StandardCharsets.UTF_16BE, 2);
    }
    int pairs = head.length / 2;
    int evenZeros = zeros(head, 0);
    int oddZeros = zeros(head, 1);
    if (pairs > 0 && oddZeros > 0.7 * pairs && evenZeros == 0) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 0);
    }
    if (pairs > 0 && evenZeros > 0.7 * pairs && oddZeros == 0) {
      return new TextEncoding(StandardCharsets.UTF_16BE, 0);
    }
    return new TextEncoding(isUtf8(source) ? StandardCharsets.UTF_8 : WINDOWS_1252, 0);
  }

  Reader open(LedgerSource source) throws IOException {
    InputStream in = source.open();
    in.skipNBytes(markBytes);
    return new InputStreamReader(in, charset);
  }

  private static boolean begins(byte[] head, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static int zeros(byte[] head, int from) {
    int zeros = 0;
    for (int i = from; i < head.length; i += 2) {
      zeros += head[i] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private static boolean isUtf8(LedgerSource source) throws IOException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
    CharBuffer chars = CharBuffer.allocate(1 << 16);
    try (InputStream in = source.open()) {
      boolean end = false;
      while (!end) {
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        end = read < 0;
        bytes.position(bytes.position() + Math.max(0, read)).flip();
        chars.clear();
        if (decoder.decode(bytes, chars, end).isError()) {
          return false;
        }
        bytes.compact();
      }
    }
    return true;
  }
}
