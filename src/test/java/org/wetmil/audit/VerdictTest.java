package org.wetmil.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.audit.past.PastBid;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.UnitSystem;

/**
 * The page on made-up bids. A build makes 25 sets of them for each question of luck; {@code mvn
 * test -Dtest=VerdictTest -Dverdict.sets=100} makes more.
 */
class VerdictTest {
  private static final int SETS = Integer.getInteger("verdict.sets", 25);

  @Test
  void bothHiddenCausesAreNamedAndNothingElse() {
    Verdict verdict = audit(new InventedContractor(1.3, 1.35, 7).bids(24)).verdict();
    assertThat(verdict.causes())
        .extracting(Cause::group)
        .containsExactly("Cedar at heights over 14 to 20 ft", "block filler");
    Cause crew = verdict.causes().get(0);
    Cause filler = verdict.causes().get(1);
    assertThat(crew.likely().holds(1.35)).isTrue();
    assertThat(filler.likely().holds(1.3)).isTrue();
  }

  @Test
  void theHiddenCausesAreFoundAlmostWhateverTheLuck() {
    long found =
        LongStream.range(100, 100 + SETS)
            .mapToObj(seed -> groups(1.3, 1.35, seed))
            .filter(groups -> groups.contains("block filler"))
            .filter(groups -> groups.contains("Cedar at heights over 14 to 20 ft"))
            .count();
    assertThat(found).isGreaterThanOrEqualTo(SETS * 9L / 10);
  }

  @Test
  void groupsThatDidNothingAreSeldomNamed() {
    // One in twenty for each measure, at most, by the rule against false alarms.
    long alarms = LongStream.range(100, 100 + SETS).filter(s -> !groups(1, 1, s).isEmpty()).count();
    assertThat(alarms).isLessThanOrEqualTo(SETS / 10);
  }

  @Test
  void whereNothingIsHiddenNothingIsChanged() {
    Verdict verdict = audit(new InventedContractor(1, 1, 7).bids(24)).verdict();
    assertThat(verdict.causes()).isEmpty();
    assertThat(verdict.change()).containsExactly("Do not change anything yet.");
  }

  @Test
  void fewBidsGiveFiguresButNoAdvice() {
    List<PastBid> four = new InventedContractor(1.3, 1.35, 7).bids(4);
    assertThat(audit(four).verdict().helped())
        .allMatch(sentence -> sentence.startsWith("Do not change anything yet"))
        .hasSize(2);
  }

  @Test
  void noBidAtAllIsSaidAsSuch() {
    Verdict verdict = audit(List.of()).verdict();
    assertThat(verdict.bids()).isEqualTo("No bid says how the job came out.");
    assertThat(verdict.right()).isEmpty();
  }

  @Test
  void theSameBidsGiveTheSamePage() {
    assertThat(audit(new InventedContractor(1.3, 1.35, 7).bids(24)).verdict())
        .isEqualTo(audit(new InventedContractor(1.3, 1.35, 7).bids(24)).verdict());
  }

  private static List<String> groups(double fillerLoss, double slowAtHeights, long seed) {
    List<PastBid> bids = new InventedContractor(fillerLoss, slowAtHeights, seed).bids(24);
    return audit(bids).verdict().causes().stream()
        .filter(cause -> cause.by() != null)
        .map(Cause::group)
        .toList();
  }

  private static Audit audit(List<PastBid> bids) {
    return Audit.of(bids, Catalogue.builtIn(), PaintTable.LOSS, UnitSystem.US);
  }
}
