package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A number that no wall, pump or film has stops at the formula that it is handed to. */
class RefusedInputsTest {
  /** Within the range of every input of these formulas, whatever its unit. */
  private static final double TAKEN = 0.5;

  private static final List<Class<?>> FORMULAS =
      List.of(
          Film.class,
          Flow.class,
          Spread.class,
          Voc.class,
          Wear.class,
          Yield.class,
          FilterMesh.class);

  static Stream<Method> formulas() {
    return FORMULAS.stream()
        .flatMap(each -> Arrays.stream(each.getDeclaredMethods()))
        .filter(each -> Modifier.isPublic(each.getModifiers()))
        .filter(each -> Modifier.isStatic(each.getModifiers()))
        .filter(each -> each.getParameterCount() > 0)
        .filter(
            each -> Arrays.stream(each.getParameterTypes()).allMatch(type -> type == double.class))
        .sorted(Comparator.comparing(Method::toString));
  }

  @Test
  void formulasAreFound() {
    assertThat(formulas().count()).isGreaterThan(20);
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void negativeNumbersAndThoseThatAreNoneAreRefused(Method formula) {
    Object[] usual = new Object[formula.getParameterCount()];
    Arrays.fill(usual, TAKEN);
    assertThatCode(() -> call(formula, usual)).doesNotThrowAnyException();
    for (int i = 0; i < usual.length; i++) {
      for (double wrong : new double[] {-TAKEN, Double.NaN}) {
        Object[] given = usual.clone();
        given[i] = wrong;
        assertThatThrownBy(() -> call(formula, given))
            .as("%s of input %d, %s", formula, i + 1, wrong)
            .isInstanceOf(IllegalArgumentException.class);
      }
    }
  }

  private static Object call(Method formula, Object... given) throws Throwable {
    try {
      return formula.invoke(null, given);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }
}
