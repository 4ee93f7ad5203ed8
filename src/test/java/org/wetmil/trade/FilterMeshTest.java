package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class FilterMeshTest {

  static List<Published.Row> sieves() {
    return Published.rows("sieve-openings.csv");
  }

  @ParameterizedTest
  @MethodSource("sieves")
  void aMeshHasTheOpeningOfItsSieve(Published.Row row) {
    FilterMesh mesh =
        Arrays.stream(FilterMesh.values())
            .filter(m -> m.number() == row.number("mesh"))
            .findFirst()
            .orElseThrow();
    row.check(mesh.openingMicron());
  }

  /** 0.6 x 25.4 um per thou: 150 um needs 9.84 thou, 250 um 16.4, 300 um 19.7, 600 um 39.4. */
  @ParameterizedTest
  @CsvSource({"7, 200", "9, 200", "10, 100", "16, 100", "17, 60", "19, 60", "20, 50", "40, 30"})
  void theFilterIsTheCoarsestThatHoldsBackWhatWouldClog(int orificeThou, int mesh) {
    assertThat(FilterMesh.coarsestFor(orificeThou, 0.6))
        .hasValueSatisfying(found -> assertThat(found.number()).isEqualTo(mesh));
  }

  @Test
  void noFilterIsFineEnoughForATinyOrifice() {
    assertThat(FilterMesh.coarsestFor(4, 0.6)).isEmpty();
  }
}
