package org.wetmil.catalogue;

/** Every setting of a bid; its value, unit, range and source stand in settings.csv. */
public enum Setting {
  JOB("Job"),
  UNITS("Units"),
  MEASURING_RULE("Measuring rule"),
  FIGURES_FOLLOW("Figures follow"),
  DISTANCE("Distance"),
  OVERLAP("Overlap"),
  DISCHARGE("Discharge coefficient"),
  WASTE("Waste"),
  BROAD_SLOWEST("Broad slowest"),
  BROAD_FASTEST("Broad fastest"),
  BROAD_EASY("Broad easy"),
  JOINERY_SLOWEST("Joinery slowest"),
  JOINERY_FASTEST("Joinery fastest"),
  JOINERY_EASY("Joinery easy"),
  NARROW_WORK("Narrow work"),
  NARROW_FIT("Narrow fit"),
  LEAST_PRESSURE("Least atomising pressure"),
  GREATEST_PRESSURE("Greatest atomising pressure"),
  LEAST_DISTANCE("Least distance"),
  GREATEST_DISTANCE("Greatest distance"),
  PUMP_RESERVE("Pump reserve"),
  GUNS("Guns"),
  CREW("Crew"),
  HOURS_A_DAY("Hours a day"),
  WORKING_MAXIMUM("Working maximum"),
  FILM_TOLERANCE("Film tolerance"),
  FINE_STEP("Fine step"),
  HEIGHT_STEP_1("Height step 1"),
  HEIGHT_STEP_2("Height step 2"),
  HEIGHT_STEP_3("Height step 3"),
  BACK_ROLL("Back-roll"),
  AREA_TOLERANCE("Area tolerance"),
  GREATEST_WALL_HEIGHT("Greatest wall height"),
  GREATEST_TRIM_GIRTH("Greatest trim girth"),
  SPREAD_LOW("Spread low"),
  SPREAD_HIGH("Spread high"),
  FILTER_SHARE("Filter share"),
  WORN("Worn"),
  REPLACE("Replace"),
  PAIL_WASTE("Pail waste"),
  HOSE_RESIDUE("Hose residue"),
  ORDER_BY("Order by"),
  YEAR_BUILT("Year built"),
  AIR_TEMPERATURE("Air temperature"),
  SURFACE_TEMPERATURE("Surface temperature"),
  HUMIDITY("Humidity"),
  DEW_POINT_MARGIN("Dew point margin"),
  CREW_LANGUAGE("Crew language");

  private final String title;

  Setting(String title) {
    this.title = title;
  }

  /** The name written on a Settings sheet. */
  public String title() {
    return title;
  }
}
