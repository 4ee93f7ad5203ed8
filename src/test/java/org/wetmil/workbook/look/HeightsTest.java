package org.wetmil.workbook.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetmil.checks.Checks;

class HeightsTest {
  private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);

  @Test
  void aTextIsBrokenBetweenWords() {
    assertThat(Heights.lines("four four four", 10)).isEqualTo(2);
    assertThat(Heights.lines("fourteen fourteen fourteen", 10)).isEqualTo(3);
    assertThat(Heights.lines("one\n\nthree", 10)).isEqualTo(3);
    assertThat(Heights.lines("0".repeat(25), 11)).isEqualTo(3);
    assertThat(Heights.lines("", 10)).isEqualTo(1);
  }

  /** What the platform's own layout of text needs is given, and hardly more. */
  @Test
  void noTextOfACheckNeedsMoreLinesThanItIsGiven() {
    Font font = sans();
    List<String> texts =
        Checks.ALL.stream()
            .flatMap(check -> Stream.of(check.title(), check.why(), check.advice()))
            .toList();
    int given = 0;
    int needed = 0;
    for (int width : new int[] {14, 22, 38, 50}) {
      for (String text : texts) {
        int lines = Heights.lines(text, width);
        int measured = measured(text, width, font);
        assertThat(lines).as("%s in %d", text, width).isGreaterThanOrEqualTo(measured);
        given += lines;
        needed += measured;
      }
    }
    assertThat(given).isLessThan((int) (1.25 * needed));
  }

  private static int measured(String text, int width, Font font) {
    double digit = font.getStringBounds("0", PAPER).getWidth();
    AttributedString words = new AttributedString(text);
    words.addAttribute(TextAttribute.FONT, font);
    LineBreakMeasurer lines = new LineBreakMeasurer(words.getIterator(), PAPER);
    int count = 0;
    while (lines.getPosition() < text.length()) {
      lines.nextLayout((float) ((width - 1) * digit));
      count++;
    }
    return count;
  }

  private static Font sans() {
    try {
      Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 11);
      assumeTrue(font.getStringBounds("0", PAPER).getWidth() > 0, "there is no font here");
      return font;
    } catch (RuntimeException | LinkageError e) {
      assumeTrue(false, "there is no font here: " + e);
      throw e;
    }
  }
}
