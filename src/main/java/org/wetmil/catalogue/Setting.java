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
  CREW_LANGUAGE("Crew language"),
  SHOW_MEASURING("Show measuring"),
  ROLLING_SHUTTER("Rolling shutter"),
  RUNNING_GIRTH("Running girth"),
  CONTAINER_SIZES("Container sizes"),
  CONTAINER_SIZES_METRIC("Container sizes metric"),
  CURRENCY("Currency"),
  LABOUR_RATE("Labour rate"),
  BURDEN("Burden"),
  SUNDRIES("Sundries"),
  EQUIPMENT("Equipment"),
  ACCESS("Access"),
  TAX_ON_MATERIAL("Tax on material"),
  OVERHEAD("Overhead"),
  PROFIT("Profit"),
  PROFIT_AS("Profit as"),
  MINIMUM_CHARGE("Minimum charge"),
  ROUNDING_STEP("Rounding step"),
  PRICE_ASKED("Price asked"),
  TAX_ON_PRICE("Tax on price"),
  TAX_AS("Tax as"),
  SMALLEST_AMOUNT("Smallest amount"),
  VALIDITY("Validity days");

  private final String title;

  Setting(String title) {
    this.title = title;
  }

  /** The name written on a Settings sheet. */
  public String title() {
    return title;
  }
}
