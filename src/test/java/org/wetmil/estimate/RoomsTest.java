package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;

/** Which line of a room covers its floor, and which sizes it. */
class RoomsTest {
  private final Rooms rooms = new Rooms();

  private Rooms.Room add(BidLine line, boolean counts) {
    return rooms.add(Work.of(line, Catalogue.builtIn()), counts);
  }

  private static BidLine line(String room, String surface, Object... sizes) {
    List<Object> cells = new ArrayList<>();
    cells.addAll(List.of(InputColumn.ROOM, room, InputColumn.SURFACE, surface));
    cells.addAll(List.of(sizes));
    return Bids.line(cells.toArray());
  }

  private static final Object[] SIDES = {InputColumn.LENGTH, 20, InputColumn.WIDTH, 15};

  @Test
  void aRoomIsOneHoweverItsNameIsSpelt() {
    Rooms.Room hall = add(line("Hall", "walls"), true);

    assertThat(add(line(" hall", "ceiling"), true)).isSameAs(hall);
    assertThat(add(line("Bath", "ceiling"), true)).isNotSameAs(hall);
    assertThat(rooms.of(line(" hall", "trim"))).isSameAs(hall);
  }

  @Test
  void theFirstWallsOrCeilingThatCountCoverTheFloorAsTheFirstSizedLineSays() {
    BidLine floor = line("Hall", "floor", SIDES);
    BidLine walls = line("Hall", "walls", InputColumn.LENGTH, 70, InputColumn.HEIGHT, 9);
    BidLine ceiling = line("Hall", "ceiling", SIDES);
    Rooms.Room room = add(floor, true);
    add(walls, true);
    add(ceiling, true);

    assertThat(room.isCoveredOn(walls)).isTrue();
    assertThat(room.isCoveredOn(floor)).isFalse();
    assertThat(room.isCoveredOn(ceiling)).isFalse();
    assertThat(room.floorOf(walls)).isSameAs(floor);
    assertThat(room.floorOf(ceiling)).isNull();
  }

  /** Where none counts, the first does: the line by itself is still right. */
  @Test
  void aLineThatDoesNotCountCoversTheFloorUntilOneDoes() {
    BidLine out = line("Hall", "walls", SIDES);
    BidLine alsoOut = line("Hall", "ceiling", SIDES);
    BidLine in = line("Hall", "ceiling", SIDES);
    BidLine late = line("Hall", "walls", SIDES);
    Rooms.Room room = add(out, false);
    add(alsoOut, false);
    assertThat(room.isCoveredOn(out)).isTrue();

    add(in, true);
    add(late, true);
    assertThat(room.isCoveredOn(out)).isFalse();
    assertThat(room.isCoveredOn(in)).isTrue();
    assertThat(room.floorOf(in)).isSameAs(out);
  }

  /** A soffit has a length and a width, and no floor; half a size is none. */
  @Test
  void workOutdoorsAndHalfASizeSizeNoFloor() {
    BidLine walls = line("Hall", "walls", InputColumn.LENGTH, 70);
    Rooms.Room room = add(walls, true);
    add(line("Hall", "soffit", SIDES), true);
    add(line("Hall", "ceiling", InputColumn.WIDTH, 15), true);
    add(line("Hall", "moat"), true);

    assertThat(room.isCoveredOn(walls)).isTrue();
    assertThat(room.floorOf(walls)).isNull();
    BidLine sized = line("Hall", "moat", SIDES);
    add(sized, false);
    assertThat(room.floorOf(walls)).isSameAs(sized);
  }
}
