package org.wetmil.ledger;

import java.util.Set;

/** What is bought by volume beside paint and is none: solvents, cleaners, fillers, fluids. */
public final class OtherGoods {
  private OtherGoods() {}

  /** Their words, without accents and in small letters. */
  public static Set<String> words() {
    return LedgerWords.otherGoods();
  }
}
