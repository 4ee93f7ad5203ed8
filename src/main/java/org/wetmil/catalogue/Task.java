package org.wetmil.catalogue;

/** Tasks that take labour; their rates stand in labour-rates.csv. */
public enum Task {
  COVER_FLOOR("cover floor"),
  TAPE_EDGE("tape and paper an edge"),
  MASK_OPENING("mask an opening"),
  MASK_HARDWARE("mask door hardware"),
  UNMASK("unmask and tidy"),
  DUST("dust only"),
  DUST_AND_WIPE("dust and wipe"),
  LIGHT_SAND("light sand"),
  SCRAPE("scrape and spot prime"),
  CAULK("caulk and fill"),
  BACK_ROLL_SMOOTH("back-roll smooth"),
  BACK_ROLL_ROUGH("back-roll rough"),
  SET_UP("set-up"),
  CLEAN_UP("clean-up"),
  CHANGE_COATING("colour or product change"),
  CHANGE_TIP("tip change"),
  TOUCH_UP("touch-up"),
  HEIGHT_1("height to step 1"),
  HEIGHT_2("height to step 2"),
  HEIGHT_3("height to step 3"),
  HEIGHT_OVER("height over step 3");

  private final String title;

  Task(String title) {
    this.title = title;
  }

  /** The name written on a Labour rates sheet. */
  public String title() {
    return title;
  }
}
