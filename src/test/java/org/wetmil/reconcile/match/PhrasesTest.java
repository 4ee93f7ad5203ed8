package org.wetmil.reconcile.match;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PhrasesTest {
  private static Phrases of(String... names) {
    Phrases phrases = new Phrases();
    for (String name : names) {
      phrases.add(name);
    }
    return phrases;
  }

  @Test
  void aNameIsFoundWholeInAnyCaseAndNumber() {
    Phrases phrases = of("dry fall", "two-part", "stain");

    assertThat(phrases.find("White DRY-FALL, 5 gal")).containsExactly("dry fall");
    assertThat(phrases.find("Two part hardener")).containsExactly("two part");
    assertThat(phrases.find("Wood stains")).containsExactly("stain");
    assertThat(phrases.find("Stainless scraper; fall protection, dry")).isEmpty();
  }

  @Test
  void ofNamesInsideOneAnotherTheLongestIsFound() {
    assertThat(of("latex", "primer", "latex primer").find("Latex primer white"))
        .containsExactly("latex primer");
  }

  @Test
  void ofNamesThatOverlapTheLastIsFound() {
    assertThat(of("interior latex", "latex primer").find("Interior latex primer"))
        .containsExactly("latex primer");
  }

  @Test
  void namesApartAreAllFound() {
    assertThat(of("latex", "primer", "latex primer").find("Primer, latex"))
        .containsExactly("primer", "latex");
  }
}
