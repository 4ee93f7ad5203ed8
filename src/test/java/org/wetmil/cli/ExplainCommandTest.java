package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

class ExplainCommandTest {
  @TempDir private Path folder;

  @Test
  void explainsALineAndEndsWithZero() {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));

    Ran ran = Ran.of("explain", bid, "Bid!C2");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .startsWith("bid.xlsx, sheet Bid, row 2: walls of Office in latex", "C2 is Length.")
        .contains("    = 2 × (12 ft + 10 ft) × 9 ft", "    = 396 ft²");
    assertThat(folder).isDirectoryNotContaining("glob:**filled*");
  }

  @Test
  void aCellOfNoLineEndsWithThree() {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));

    Ran ran = Ran.of("explain", bid, "1");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .containsExactly(
            bid
                + ": row 1 of sheet Bid is no bid line: the headings stand there; lines stand in"
                + " rows 2 to 4.");
  }

  @Test
  void whatIsNoCellEndsWithTwo() {
    Ran ran = Ran.of("explain", SmallBid.write(folder.resolve("bid.xlsx")), "here");

    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err().get(0)).contains("\"here\" is no cell; write it as in H12");
  }
}
