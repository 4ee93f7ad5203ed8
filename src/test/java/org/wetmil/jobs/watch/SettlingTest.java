package org.wetmil.jobs.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class SettlingTest {
  private static final Path BID = Path.of("bid.xlsx");
  private static final Path OTHER = Path.of("other.xlsx");
  private static final Stamp OLD = stamp(100, 1);
  private static final Stamp NEW = stamp(100, 2);
  private static final Predicate<Path> WHOLE = file -> true;
  private static final Predicate<Path> HALF = file -> false;

  private final Settling settling = new Settling(Map.of(BID, OLD));

  @Test
  void whatIsThereAtTheBeginningIsLeftAlone() {
    assertThat(settled(Map.of(BID, OLD), 0)).isEmpty();
    assertThat(settled(Map.of(BID, OLD), 3600)).isEmpty();
  }

  @Test
  void aSavedFileSettlesOnceAfterItsRest() {
    assertThat(settled(Map.of(BID, NEW), 10)).isEmpty();
    assertThat(settled(Map.of(BID, NEW), 11.9)).isEmpty();
    assertThat(settled(Map.of(BID, NEW), 12)).containsExactly(BID);
    assertThat(settled(Map.of(BID, NEW), 60)).isEmpty();
  }

  @Test
  void aFileThatIsStillWrittenBeginsItsRestAnew() {
    assertThat(settled(Map.of(BID, NEW), 10)).isEmpty();
    assertThat(settled(Map.of(BID, stamp(200, 2)), 11.9)).isEmpty();
    assertThat(settled(Map.of(BID, stamp(200, 2)), 13.8)).isEmpty();
    assertThat(settled(Map.of(BID, stamp(200, 2)), 13.9)).containsExactly(BID);
  }

  @Test
  void aFileThatIsPutBackAsItWasIsNotFilled() {
    assertThat(settled(Map.of(BID, NEW), 10)).isEmpty();
    assertThat(settled(Map.of(BID, OLD), 11)).isEmpty();
    assertThat(settled(Map.of(BID, OLD), 20)).isEmpty();
  }

  @Test
  void halfAFileIsGivenTimeAndThenHandedOver() {
    settled(Map.of(BID, NEW), 0);

    assertThat(settling.settled(Map.of(BID, NEW), seconds(19.9), HALF)).isEmpty();
    assertThat(settling.settled(Map.of(BID, NEW), seconds(20), HALF)).containsExactly(BID);
  }

  @Test
  void halfAFileThatBecomesWholeIsFilledThen() {
    settled(Map.of(BID, NEW), 0);

    assertThat(settling.settled(Map.of(BID, NEW), seconds(5), HALF)).isEmpty();
    assertThat(settling.settled(Map.of(BID, NEW), seconds(6), WHOLE)).containsExactly(BID);
  }

  @Test
  void aNewFileAndOneThatCameBackAreFilled() {
    assertThat(settled(Map.of(OTHER, NEW), 0)).isEmpty();
    assertThat(settled(seen(BID, OLD, OTHER, NEW), 2)).containsExactly(OTHER);
    assertThat(settled(seen(BID, OLD, OTHER, NEW), 4)).containsExactly(BID);
  }

  @Test
  void severalSettleInTheOrderSeen() {
    settled(seen(OTHER, NEW, BID, NEW), 0);

    assertThat(settled(seen(OTHER, NEW, BID, NEW), 2)).containsExactly(OTHER, BID);
  }

  @Test
  void whatIsKnownByNowIsLeftAlone() {
    settled(Map.of(BID, NEW), 0);
    settling.know(BID, NEW);

    assertThat(settled(Map.of(BID, NEW), 10)).isEmpty();
  }

  private List<Path> settled(Map<Path, Stamp> seen, double atSeconds) {
    return settling.settled(seen, seconds(atSeconds), WHOLE);
  }

  private static Map<Path, Stamp> seen(Path one, Stamp its, Path other, Stamp others) {
    Map<Path, Stamp> seen = new LinkedHashMap<>();
    seen.put(one, its);
    seen.put(other, others);
    return seen;
  }

  private static Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  private static Stamp stamp(long bytes, long changedS) {
    return new Stamp(bytes, FileTime.fromMillis(changedS * 1000));
  }
}
