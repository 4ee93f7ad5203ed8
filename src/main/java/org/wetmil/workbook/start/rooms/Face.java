package org.wetmil.workbook.start.rooms;

/** The faces of a room that a bid line can stand for. */
public enum Face {
  WALLS("walls", RoomFact.WALL_FINISH),
  CEILING("ceiling", RoomFact.CEILING_FINISH),
  FLOOR("floor", RoomFact.FLOOR_FINISH);

  private final String surface;
  private final RoomFact finish;

  Face(String surface, RoomFact finish) {
    this.surface = surface;
    this.finish = finish;
  }

  /** Its name in the Surfaces table. */
  public String surface() {
    return surface;
  }

  /** The fact that says what it is finished with. */
  public RoomFact finish() {
    return finish;
  }
}
