package org.wetmil.estimate.limits;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Condition;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.ledger.DateText;

/**
 * Old paint that may be disturbed in one room, or outside, in a building from before 1978, with
 * what was disturbed there within 30 days before (published: 40 CFR 745.83, seen whole; work in one
 * room within 30 days counts as one job).
 *
 * @param lines of the bid that disturb it
 * @param ft2 by those lines; filler and primer of a surface of a room lie under what is named
 *     beside them, so that the one counts that covers most
 * @param earlierFt2 by earlier work that counts with it
 */
public record OldPaint(List<FilledLine> lines, double ft2, double earlierFt2) {
  /** Buildings of this year and later are outside the rule (published, 40 CFR 745). */
  public static final int YEAR = 1978;

  /** Disturbed area of one room up to which work is minor (published, 40 CFR 745.83). */
  public static final double ROOM_FT2 = 6;

  /** Disturbed area outside up to which work is minor (published, 40 CFR 745.83). */
  public static final double OUTSIDE_FT2 = 20;

  /** Days within which work in one place counts as one job (published, 40 CFR 745.83). */
  public static final long DAYS = 30;

  public OldPaint {
    lines = List.copyOf(lines);
  }

  /** The places of a bid where old paint may be disturbed; none in a building of 1978 or later. */
  public static List<OldPaint> all(FilledBid filled) {
    Catalogue catalogue = filled.bid().catalogue();
    if (!(catalogue.number(Setting.YEAR_BUILT) < YEAR)) {
      return List.of();
    }
    // the limit outside is for the whole job, inside for each room
    Map<Object, List<FilledLine>> places = new LinkedHashMap<>();
    filled
        .lines()
        .filter(line -> line.isCounted() && mayCarry(line.work().condition()))
        .forEach(line -> places.computeIfAbsent(place(line), p -> new ArrayList<>()).add(line));
    return places.values().stream().map(lines -> of(catalogue, lines)).toList();
  }

  private static OldPaint of(Catalogue catalogue, List<FilledLine> lines) {
    FilledLine first = lines.get(0);
    boolean outside = first.work().surface().outdoors();
    String room = Names.key(first.line().text(InputColumn.ROOM));
    Optional<LocalDate> begins = DateText.read(catalogue.text(Setting.WORK_BEGINS));
    double earlier =
        catalogue.rows(Tables.EARLIER_WORK).stream()
            .filter(row -> row.text("Where").equals("outside") == outside)
            .filter(row -> outside || Names.key(row.text("Room")).equals(room))
            .filter(row -> isWithin(begins, row))
            .mapToDouble(row -> row.number("Area"))
            .sum();
    return new OldPaint(lines, disturbedFt2(lines), earlier);
  }

  /** Of each face the layer that covers most of it; finishes lie beside each other. */
  private static double disturbedFt2(List<FilledLine> lines) {
    Map<Object, Map<Layer, Double>> faces = new LinkedHashMap<>();
    for (FilledLine line : lines) {
      Object face =
          List.of(
              line.line().sheet(),
              Names.key(line.line().text(InputColumn.ROOM)),
              line.work().surface().name());
      faces
          .computeIfAbsent(face, each -> new EnumMap<>(Layer.class))
          .merge(Layer.of(line.work().coating()), line.base(FilledColumn.NET_AREA), Double::sum);
    }
    return faces.values().stream()
        .mapToDouble(layers -> layers.values().stream().max(Double::compare).orElseThrow())
        .sum();
  }

  private enum Layer {
    FILLER,
    PRIMER,
    FINISH;

    static Layer of(Coating coating) {
      if (coating.fillsVoids()) {
        return FILLER;
      }
      return coating.isUndercoat() ? PRIMER : FINISH;
    }
  }

  /** Without one of the dates earlier work counts, since nothing says that it does not. */
  private static boolean isWithin(Optional<LocalDate> begins, Row row) {
    Optional<LocalDate> date = DateText.read(row.text("Date"));
    return begins.isEmpty()
        || date.isEmpty()
        || Math.abs(ChronoUnit.DAYS.between(date.get(), begins.get())) <= DAYS;
  }

  private static boolean mayCarry(Condition condition) {
    return condition != null && condition.oldPaint();
  }

  private static Object place(FilledLine line) {
    return line.work().surface().outdoors()
        ? "outside"
        : List.of(line.line().sheet(), Names.key(line.line().text(InputColumn.ROOM)));
  }

  public FilledLine first() {
    return lines.get(0);
  }

  public boolean isOutside() {
    return first().work().surface().outdoors();
  }

  /** Area of one place up to which work is minor. */
  public double limitFt2() {
    return isOutside() ? OUTSIDE_FT2 : ROOM_FT2;
  }

  /** Old paint of this job and of what counts with it. */
  public double togetherFt2() {
    return ft2 + earlierFt2;
  }

  public boolean isOver() {
    return togetherFt2() > limitFt2();
  }
}
