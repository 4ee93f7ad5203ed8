package org.wetmil.workbook.start.rooms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.quantity.Unit;

/** Sizes within the words of a room list. */
class SizesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Single-Flush:0762 x 2032mm | 762 | 2032",
        "762 x 2032 door | 762 | 2032",
        "Door 762x2032,fire rated | 762 | 2032",
        "Leaf 762 mm x 2032 mm. | 762 | 2032",
      })
  void findsWidthAndHeight(String text, double widthMm, double heightMm) {
    double[] feet = Sizes.within(text, Unit.MILLIMETRE).orElseThrow();

    // 1 ft is 304.8 mm exactly: NIST Handbook 44, appendix C
    assertThat(feet[0] * 304.8).isCloseTo(widthMm, within(1e-6));
    assertThat(feet[1] * 304.8).isCloseTo(heightMm, within(1e-6));
  }

  @Test
  @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD, unit = TimeUnit.SECONDS)
  void looksThroughLongTextsOnce() {
    String digits = "1".repeat(16_000);
    String spaces = " ".repeat(8_000);

    assertThat(Sizes.within("1" + spaces + "x" + digits + "a", Unit.MILLIMETRE)).isEmpty();
    assertThat(Sizes.within("1,".repeat(16_000), Unit.MILLIMETRE)).isEmpty();
  }
}
