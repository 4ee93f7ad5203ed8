package org.wetmil.workbook.opc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class XstringTest {
  /** The example of ECMA-376 part 1, 22.9.2.19: a backspace, written _x0008_. */
  @Test
  void aCharacterThatXmlCannotHoldIsWrittenAsItsCode() {
    assertThat(Xstring.encode("a\bb")).isEqualTo("a_x0008_b");
    assertThat(Xstring.decode("a_x0008_b")).isEqualTo("a\bb");
  }

  /** ECMA-376 part 1, 22.9.2.19: _x0008_ meant literally is written _x005F_x0008_. */
  @Test
  void textThatLooksLikeACodeIsEscaped() {
    assertThat(Xstring.encode("_x0008_")).isEqualTo("_x005F_x0008_");
    assertThat(Xstring.decode("_x005F_x0008_")).isEqualTo("_x0008_");
  }

  @Test
  void ordinaryTextIsLeftAlone() {
    assertThat(Xstring.encode("2 coats\t\n_x_ \uD83D\uDE00"))
        .isEqualTo("2 coats\t\n_x_ \uD83D\uDE00");
  }

  @Test
  void everyTextComesBack() {
    Random random = new Random(20);
    String alphabet = "_x0aF5\uD800\uDC00\u0000\r\uFFFFz";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(16); length > 0; length--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      assertThat(Xstring.decode(Xstring.encode(text.toString()))).isEqualTo(text.toString());
    }
  }
}
