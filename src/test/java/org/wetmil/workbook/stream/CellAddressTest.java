package org.wetmil.workbook.stream;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CellAddressTest {
  @Test
  void everyColumnComesBackFromItsLetters() {
    for (int column = 0; column < CellAddress.MAX_COLUMNS; column++) {
      CellAddress address = new CellAddress(6, column);
      assertThat(CellAddress.find(address.toString())).contains(address);
    }
    assertThat(CellAddress.letters(CellAddress.MAX_COLUMNS - 1)).isEqualTo("XFD");
  }

  @Test
  void whatIsNoAddressOfASheetIsRefused() {
    for (String text : new String[] {"", "A", "7", "A0", "XFE1", "A1048577", "A1B", "Å1", "A-1"}) {
      assertThat(CellAddress.find(text)).as(text).isEmpty();
    }
  }
}
