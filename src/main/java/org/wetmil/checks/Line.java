package org.wetmil.checks;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Work;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** A filled line with the tables it was computed from: what a rule looks at. */
record Line(Catalogue catalogue, FilledLine filled) {

  static Stream<Line> all(FilledBid bid) {
    return bid.lines().map(filled -> new Line(bid.bid().catalogue(), filled));
  }

  /** Lets only the first line of each key pass; for a stream in order. */
  static Predicate<Line> firstOf(Function<Line, Object> key) {
    Set<Object> seen = new HashSet<>();
    return line -> seen.add(key.apply(line));
  }

  Work work() {
    return filled.work();
  }

  Coating coating() {
    return work().coating();
  }

  Surface surface() {
    return work().surface();
  }

  Sprayer sprayer() {
    return work().sprayer();
  }

  UnitSystem system() {
    return filled.system();
  }

  InputValue cell(InputColumn column) {
    return filled.line().get(column);
  }

  /** Whether the sheet of the line has the column. */
  boolean hasColumn(InputColumn column) {
    return filled.line().values().containsKey(column);
  }

  String text(InputColumn column) {
    return filled.line().text(column);
  }

  double number(InputColumn column) {
    return filled.line().number(column);
  }

  boolean has(InputColumn column) {
    return filled.line().has(column);
  }

  double setting(Setting setting) {
    return catalogue.number(setting);
  }

  boolean isSetUp() {
    return filled.isSetUp();
  }

  /** Whether the figures of a tip rest on no dimension that is missing. */
  boolean isMeasured() {
    return isSetUp() && (filled.area().isKnown() || !Double.isNaN(filled.stroke().widthIn()));
  }

  /** The planned tip at work; empty without one, or when nothing comes out of it. */
  Optional<Setup> planned() {
    return Optional.ofNullable(filled.planned()).filter(setup -> setup.gun().flowGpm() > 0);
  }

  /**
   * The planned tip at work, unless it is the recommended one and judged as that, or there is no
   * judging it for want of a dimension.
   */
  Optional<Setup> plannedOther() {
    return planned()
        .filter(setup -> isMeasured())
        .filter(setup -> !setup.tip().equals(filled.recommended().tip()));
  }

  /** The recommended tip at work; empty when no tip serves. */
  Optional<Setup> recommended() {
    return Optional.ofNullable(filled.recommended()).filter(Setup::isTip);
  }

  /** The tips that may go to the wall: the planned one, then the recommended one. */
  List<Setup> setups() {
    Setup planned = filled.planned();
    Setup recommended = recommended().orElse(null);
    if (planned == null || planned.equals(recommended)) {
      return recommended == null ? List.of() : List.of(recommended);
    }
    return recommended == null ? List.of(planned) : List.of(planned, recommended);
  }

  /** The least orifice usually taken for the coating on the surface, in thou. */
  int leastUsualThou() {
    return coating().usualFromThou(surface());
  }

  /** The end of a sentence that says which tip to take. */
  String instead() {
    return recommended()
        .map(
            setup ->
                "; use %s%s."
                    .formatted(
                        setup.tip().code(),
                        HoseAdvice.keeps(this, setup) ? "" : " once the hose leaves it pressure"))
        .orElse("; take another tip.");
  }

  String say(Quantity quantity, double base) {
    return Say.of(quantity, base, system());
  }

  Say.Pair pair(Quantity quantity, double base, double limit) {
    return Say.pair(quantity, base, limit, system());
  }

  String range(Quantity quantity, double low, double high) {
    return Say.range(quantity, low, high, system());
  }

  /** A fault in a cell of this line; of the line as a whole when the column is null. */
  Fault fault(InputColumn column, String measured, String limit, String message) {
    return new Fault(
        new Spot(filled.line().sheet(), filled.line().row(), column, ""),
        text(InputColumn.ROOM),
        text(InputColumn.SURFACE),
        measured,
        limit,
        message,
        false);
  }

  Optional<Fault> found(InputColumn column, String measured, String limit, String message) {
    return Optional.of(fault(column, measured, limit, message));
  }
}
