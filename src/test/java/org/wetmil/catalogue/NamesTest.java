package org.wetmil.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {

  @ParameterizedTest
  @CsvSource({
    "walls, Wall",
    "doors, DOOR",
    "panelled doors, Panelled  Door",
    "sashes, sash",
    "varnishes, varnish",
    "epoxies, epoxy",
    "niches, niche",
    "boxes, box",
    "trusses, truss",
    "two-part, two part",
    "rough-sawn, Rough\u2011Sawn",
    "oil-based, oil\u2013based",
    "door frames, door\u00a0frame",
    "board_fence, Board Fence"
  })
  void spellingsOfOneNameAgree(String one, String other) {
    assertThat(Names.key(one)).isEqualTo(Names.key(other));
  }

  @ParameterizedTest
  @CsvSource({"gloss, glo", "wall, walls paint", "door, door frame", "gas, ga", "latex, late"})
  void differentNamesStayApart(String one, String other) {
    assertThat(Names.key(one)).isNotEqualTo(Names.key(other));
  }

  @Test
  void nearestNamesComeBestFirstAndAtMostThree() {
    assertThat(Names.nearest("celing", Stream.of("walls", "ceiling", "siding", "sealing")))
        .startsWith("ceiling")
        .hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void aNameThatIsMerelyAboutAsLongIsNoSuggestion() {
    List<String> names = List.of("siding", "ceiling", "railing", "exterior latex");
    assertThat(Names.nearest("Stringers", names.stream())).isEmpty();
    assertThat(Names.nearest("Shelving", names.stream())).isEmpty();
    assertThat(Names.nearest("Exterior acrylic", names.stream())).containsExactly("exterior latex");
  }

  @Test
  void aNameSaidAmongOtherWordsIsOfferedTheLongestFirst() {
    assertThat(Names.nearest("concrete block wall", Stream.of("ceiling", "walls")))
        .containsExactly("walls");
    assertThat(Names.nearest("panel doors of the old east wing", Stream.of("doors", "panel door")))
        .containsExactly("panel door", "doors");
    assertThat(Names.nearest("wallpaper of the corridor", Stream.of("wall"))).isEmpty();
  }

  @Test
  void aCoatingSaidWithItsSheenIsNoOtherCoating() {
    List<String> names = List.of("latex", "latex primer", "heavy latex", "primer", "pva primer");
    assertThat(Names.nearest("latex eggshell", names.stream())).containsExactly("latex");
    assertThat(Names.nearest("satin latex", names.stream())).containsExactly("latex");
    assertThat(Names.nearest("epoxy primer", names.stream())).containsExactly("primer");
    assertThat(Names.nearest("latex primmer", names.stream())).startsWith("latex primer");
  }

  @Test
  void aLongRemarkIsNotTakenForAMisspeltName() {
    assertThat(Names.nearest("see the note of the architect ".repeat(1000), Stream.of("walls")))
        .isEmpty();
  }

  @Test
  void noTableHasTwoNamesThatCannotBeToldApart() {
    for (Tables table : Tables.values()) {
      List<String> keys =
          Catalogue.builtIn().rows(table).stream().map(row -> Names.key(row.name())).toList();
      assertThat(keys).as(table.title()).doesNotHaveDuplicates();
    }
  }
}
