package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConstantsTest {

  @Test
  void everyConstantIsListedForPrinting() throws IllegalAccessException {
    List<Object> declared = new ArrayList<>();
    for (Field field : Constants.class.getDeclaredFields()) {
      if (field.getType() == Constant.class) {
        declared.add(field.get(null));
      }
    }
    assertThat(declared).isNotEmpty().containsExactlyInAnyOrderElementsOf(Constants.ALL);
  }

  @Test
  void everyConstantSaysWhereItIsFrom() {
    assertThat(Constants.ALL)
        .allSatisfy(
            constant -> {
              assertThat(constant.name()).isNotBlank();
              assertThat(constant.unit()).isNotBlank();
              assertThat(constant.source()).isNotBlank();
            });
  }
}
