package org.wetmil.estimate.limits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.trade.FilmAcceptance;

/**
 * The gauge readings of one surface of a room, against the film that the bid's lines specify for
 * it: the total of all its lines.
 *
 * @param room as the readings name it
 * @param surface as the readings name it
 * @param spots in the order of their first readings
 * @param specifiedLowMil low end of the specified total; NaN where no line of the bid specifies any
 * @param specifiedHighMil high end; the same for a single value
 * @param ft2 net area of the lines; NaN where none is known
 * @param known whether the bid has such a line
 */
public record FilmArea(
    String room,
    String surface,
    List<FilmSpot> spots,
    double specifiedLowMil,
    double specifiedHighMil,
    double ft2,
    boolean known) {

  public FilmArea {
    spots = List.copyOf(spots);
  }

  /** The areas that the sheet of film readings has, in its order. */
  public static List<FilmArea> all(FilledBid filled) {
    Catalogue catalogue = filled.bid().catalogue();
    Map<List<String>, Map<String, List<Row>>> places = new LinkedHashMap<>();
    for (Row row : catalogue.rows(Tables.FILM_READINGS)) {
      String spot = row.text("Spot").isEmpty() ? "#" + row.name() : Names.key(row.text("Spot"));
      places
          .computeIfAbsent(key(row.text("Room"), row.text("Surface")), k -> new LinkedHashMap<>())
          .computeIfAbsent(spot, k -> new ArrayList<>())
          .add(row);
    }
    if (places.isEmpty()) {
      return List.of();
    }
    Map<List<String>, List<FilledLine>> lines = new LinkedHashMap<>();
    filled
        .lines()
        .forEach(
            line ->
                lines
                    .computeIfAbsent(
                        key(
                            line.line().text(InputColumn.ROOM),
                            line.line().text(InputColumn.SURFACE)),
                        k -> new ArrayList<>())
                    .add(line));
    return places.entrySet().stream()
        .map(place -> of(place.getValue(), lines.getOrDefault(place.getKey(), List.of())))
        .toList();
  }

  private static List<String> key(String room, String surface) {
    return List.of(Names.key(room), Names.key(surface));
  }

  private static FilmArea of(Map<String, List<Row>> readings, List<FilledLine> lines) {
    List<FilmSpot> spots = readings.values().stream().map(FilmSpot::of).toList();
    Row first = spots.get(0).rows().get(0);
    List<InputValue> specified =
        lines.stream()
            .filter(line -> line.line().has(InputColumn.SPECIFIED_FILM))
            .map(line -> line.line().get(InputColumn.SPECIFIED_FILM))
            .toList();
    boolean any = !specified.isEmpty();
    OptionalDouble ft2 =
        lines.stream()
            .mapToDouble(line -> line.base(FilledColumn.NET_AREA))
            .filter(area -> area > 0)
            .max();
    return new FilmArea(
        first.text("Room"),
        first.text("Surface"),
        spots,
        any ? specified.stream().mapToDouble(InputValue::low).sum() : Double.NaN,
        any ? specified.stream().mapToDouble(InputValue::high).sum() : Double.NaN,
        ft2.orElse(Double.NaN),
        !lines.isEmpty());
  }

  /** What the specification accepts; empty where there is none. */
  public Optional<FilmAcceptance> accepted() {
    return specifiedLowMil > 0
        ? Optional.of(FilmAcceptance.of(specifiedLowMil, specifiedHighMil))
        : Optional.empty();
  }

  /** Mean of the spots' means. */
  public double meanMil() {
    return spots.stream().mapToDouble(FilmSpot::meanMil).average().orElseThrow();
  }

  public int readings() {
    return spots.stream().mapToInt(spot -> spot.rows().size()).sum();
  }

  /** Spots that would be measured of a surface of this size; 0 where its size is not known. */
  public int spotsWanted() {
    return ft2 > 0 ? FilmAcceptance.SPOTS_OF_AREA * FilmAcceptance.areas(ft2) : 0;
  }

  /** Spots whose mean is outside what is accepted of one. */
  public List<FilmSpot> spotsOutside() {
    return accepted()
        .map(
            accepted ->
                spots.stream().filter(spot -> accepted.isSpotOutside(spot.meanMil())).toList())
        .orElse(List.of());
  }
}
