package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.estimate.FilledBid;

/** Every check fires on its fault and is silent just inside its limit. */
class ChecksTest {
  private static final Map<String, List<Case>> CASES =
      Stream.of(
              ThinCases.all(),
              SetupCases.all(),
              JobCases.all(),
              MoneyCases.all(),
              OtherSideCases.all(),
              UnitSlipCases.all())
          .flatMap(List::stream)
          .collect(Collectors.groupingBy(Case::id, TreeMap::new, Collectors.toList()));

  static List<Check> checks() {
    return Checks.ALL.stream().filter(check -> !(check.rule() instanceof Rule.OfBooks)).toList();
  }

  static Stream<Case> cases() {
    return CASES.values().stream().flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyCheckFiresOnItsFaultAndIsSilentJustInside(Case tried) {
    assertThat(of(tried.id(), tried.fires())).isNotEmpty();
    assertThat(of(tried.id(), tried.silent())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyCheckHasACase(Check check) {
    assertThat(CASES).containsKey(check.id());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyMessageIsOneSentenceThatSaysWhatWasMeasured(Case tried) {
    assertThat(of(tried.id(), tried.fires()))
        .allSatisfy(
            finding -> {
              assertThat(finding.message()).matches("[^\\n]*[^.]\\.").doesNotContain(". ", "NaN");
              assertThat(finding.message()).contains(measured(finding));
            });
  }

  /** What the message must quote: nothing where a cell is empty. */
  private static String measured(Finding finding) {
    return finding.measured().equals("empty") ? "" : finding.measured().replace("\"", "");
  }

  static List<Finding> of(String id, FilledBid bid) {
    return Checks.run(bid).stream().filter(f -> f.check().equals(id)).toList();
  }
}
