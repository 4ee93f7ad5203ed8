package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter shown = new StringWriter();
  private final PrintWriter to = new PrintWriter(shown);

  @Test
  void itIsSilentWhereNobodyWatches() {
    try (Progress progress = new Progress(to, false, "reading bids")) {
      progress.read(0, 3);
      progress.aside(() -> {});
      progress.read(3, 3);
    }

    assertThat(shown.toString()).isEmpty();
  }

  @Test
  void aWatcherSeesHowMuchIsDoneAndALineThatIsWipedInTheEnd() {
    try (Progress progress = new Progress(to, true, "reading bids")) {
      progress.read(0, 7);
      progress.read(3, 7);
      progress.aside(() -> {});
      assertThat(frames()).anyMatch(frame -> frame.matches("reading bids +42% \\[=+ +\\] 3/7 .*"));
      assertThat(frames()).last().asString().isBlank();
      progress.read(7, 7);
    }

    assertThat(shown.toString()).doesNotContain("\n").endsWith(" \r");
    assertThat(frames()).allMatch(frame -> frame.length() < 80);
  }

  @Test
  void whatIsPrintedAsideStandsInALineOfItsOwn() {
    try (Progress progress = new Progress(to, true, "filling")) {
      progress.read(0, 2);
      progress.aside(() -> to.println("a.xlsx: done"));
      progress.read(1, 2);
    }

    assertThat(shown.toString()).containsPattern("\r *\ra.xlsx: done\\R\rfilling");
  }

  @Test
  void ofOnePieceItOnlySaysThatItGoesOn() {
    try (Progress progress = new Progress(to, true, "filling")) {
      progress.read(0, 1);
    }

    assertThat(shown.toString()).contains("filling").doesNotContain("0%", "0/1");
  }

  private List<String> frames() {
    return List.of(shown.toString().split("\r"));
  }
}
