package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BehindTest {
  private final Behind behind = new Behind();
  private final List<Integer> done = new ArrayList<>();

  @Test
  void stepsAndBytesKeepTheirOrder() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] shared = new byte[100];
    try (OutputStream to = behind.to(out)) {
      for (int i = 0; i < 1_000; i++) {
        int step = i;
        // what is handed over may be written over at once
        shared[0] = (byte) step;
        to.write(shared, 0, 1 + step % 100);
        behind.then(() -> done.add(step));
      }
    }
    behind.close(() -> done.add(1_000));
    assertThat(done).isEqualTo(IntStream.rangeClosed(0, 1_000).boxed().toList());
    ByteArrayOutputStream expected = new ByteArrayOutputStream();
    for (int i = 0; i < 1_000; i++) {
      shared[0] = (byte) i;
      expected.write(shared, 0, 1 + i % 100);
    }
    assertThat(out.toByteArray()).isEqualTo(expected.toByteArray());
  }

  @Test
  void aFailureIsThrownOnceAndTheLastStepIsStillDone() {
    behind.then(
        () -> {
          throw new IOException("full");
        });
    assertThatThrownBy(
            () -> {
              for (int i = 0; i < 1_000; i++) {
                behind.then(() -> done.add(1));
              }
            })
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("full");
    behind.then(() -> done.add(2));
    behind.close(() -> done.add(3));
    assertThat(done).containsExactly(3);
  }

  @Test
  void aFailureOfTheLastStepIsThrown() {
    assertThatThrownBy(
            () ->
                behind.close(
                    () -> {
                      throw new IllegalStateException("at the end");
                    }))
        .hasMessage("at the end");
  }

  @Test
  void anInterruptedWriterGoesOnAndStaysInterrupted() {
    Thread.currentThread().interrupt();
    for (int i = 0; i < 100; i++) {
      behind.then(() -> done.add(1));
    }
    behind.close(() -> done.add(2));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(done).hasSize(101);
  }
}
