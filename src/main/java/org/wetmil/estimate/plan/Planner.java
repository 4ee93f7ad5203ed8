package org.wetmil.estimate.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.trade.TipCode;

/**
 * Plans the lines that count. A room is masked and prepared as a whole, then its coats follow in
 * the order of the lines, primer and filler first. Of what is dry, the crew does first what is in
 * the pump already, then what most work is ready for, then the next room; else it waits.
 *
 * <p>Hours are those of the estimate over the crew; set-up and clean-up of each day are outside the
 * hours a day, as there. Changes of tip and of colour take their time where they occur.
 */
public final class Planner {
  private static final Comparator<Operation> IN_ORDER =
      Comparator.comparingInt(Operation::room).thenComparingInt(Operation::order);

  private final Catalogue catalogue;
  private final double crew;
  private final WorkClock clock;
  private final List<RoomWork> rooms;
  private final Map<Operation.Product, TreeSet<Operation>> byProduct = new LinkedHashMap<>();
  private final PriorityQueue<Operation> drying =
      new PriorityQueue<>(Comparator.comparingDouble(Operation::readyAt).thenComparing(IN_ORDER));
  private Operation.Product inPump;
  private TipCode onGun;
  private int changes;
  private double waiting;

  private Planner(FilledBid filled) {
    this.catalogue = filled.bid().catalogue();
    this.crew = catalogue.number(Setting.CREW);
    this.clock = new WorkClock(catalogue.number(Setting.HOURS_A_DAY));
    this.rooms = rooms(filled);
  }

  /** Plans a filled bid. */
  public static Plan plan(FilledBid filled) {
    Planner planner = new Planner(filled);
    planner.work();
    List<RoomPlan> rooms = planner.rooms.stream().map(room -> room.plan(planner.clock)).toList();
    return new Plan(
        rooms,
        rooms.stream().mapToInt(RoomPlan::lastDay).max().orElse(0),
        planner.waiting,
        planner.changes,
        recoats(filled));
  }

  /** A room with its operations; the first makes it ready. */
  private static final class RoomWork {
    private final String floor;
    private final String name;
    private final List<FilledLine> lines = new ArrayList<>();
    private Operation first;
    private double personHours;
    private double begun = -1;
    private double ended;

    RoomWork(FilledLine line) {
      this.floor = line.line().text(InputColumn.FLOOR);
      this.name = line.line().text(InputColumn.ROOM);
    }

    RoomPlan plan(WorkClock clock) {
      int day = clock.dayBegun(begun);
      return new RoomPlan(floor, name, personHours, day, Math.max(day, WorkClock.dayEnded(ended)));
    }
  }

  private List<RoomWork> rooms(FilledBid filled) {
    Map<List<String>, RoomWork> byKey = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .forEach(
            line ->
                byKey
                    .computeIfAbsent(
                        List.of(
                            Names.key(line.line().text(InputColumn.FLOOR)),
                            Names.key(line.line().text(InputColumn.ROOM))),
                        key -> new RoomWork(line))
                    .lines
                    .add(line));
    List<RoomWork> rooms = new ArrayList<>(byKey.values());
    int order = 0;
    for (int i = 0; i < rooms.size(); i++) {
      order = operations(rooms.get(i), i, order);
    }
    return rooms;
  }

  /** Makes the operations of a room; gives the next free place in the order. */
  private int operations(RoomWork room, int place, int order) {
    int next = order;
    double ready =
        room.lines.stream()
            .mapToDouble(line -> line.base(FilledColumn.MASK) + line.base(FilledColumn.PREPARE))
            .sum();
    room.first = new Operation(place, next++, null, null, ready, 0);
    room.personHours = ready;
    Map<String, List<Operation>> undercoats = new TreeMap<>();
    List<FilledLine> lines = new ArrayList<>(room.lines);
    lines.sort(Comparator.comparing(line -> !line.work().coating().isUndercoat()));
    for (FilledLine line : lines) {
      String surface = Names.key(line.line().text(InputColumn.SURFACE));
      List<Operation> under = undercoats.computeIfAbsent(surface, key -> new ArrayList<>());
      Operation before = room.first;
      int coats = Math.max(1, (int) Math.round(line.base(FilledColumn.COATS)));
      for (int coat = 0; coat < coats; coat++) {
        Operation laid = coat(line, coats, place, next++);
        room.personHours += laid.personHours();
        before.before(laid);
        if (coat == 0) {
          under.forEach(each -> each.before(laid));
        }
        before = laid;
      }
      if (line.work().coating().isUndercoat()) {
        under.add(before);
      }
    }
    return next;
  }

  private Operation coat(FilledLine line, int coats, int room, int order) {
    double touchUp = catalogue.rate(Task.TOUCH_UP);
    double hours = line.base(FilledColumn.SPRAY) * (1 + touchUp) + line.base(FilledColumn.ROLL);
    Coating coating = line.work().coating();
    return new Operation(
        room,
        order,
        new Operation.Product(coating.name(), Names.key(line.line().text(InputColumn.COLOUR))),
        line.followed().tip(),
        hours / coats,
        coating.recoatHours());
  }

  private void work() {
    int next = 0;
    while (next < rooms.size() || !byProduct.isEmpty() || !drying.isEmpty()) {
      dried();
      Operation operation = inPump();
      if (operation == null) {
        operation = most();
      }
      if (operation == null && next < rooms.size()) {
        operation = rooms.get(next++).first;
        ready(operation);
      }
      if (operation == null) {
        waiting += clock.waitUntil(drying.peek().readyAt());
      } else {
        work(operation);
      }
    }
  }

  /** Moves what has dried by now to what can be done. */
  private void dried() {
    while (!drying.isEmpty() && drying.peek().readyAt() <= clock.now()) {
      ready(drying.poll());
    }
  }

  private void ready(Operation operation) {
    byProduct
        .computeIfAbsent(operation.product(), product -> new TreeSet<>(IN_ORDER))
        .add(operation);
  }

  /** What can be done with the paint that is in the pump; null when nothing can. */
  private Operation inPump() {
    TreeSet<Operation> same = inPump == null ? null : byProduct.get(inPump);
    return same == null ? null : same.first();
  }

  /** Of what can be done, the first with the product that most work is ready for; null if none. */
  private Operation most() {
    TreeSet<Operation> best = null;
    double most = -1;
    for (TreeSet<Operation> same : byProduct.values()) {
      double hours = same.stream().mapToDouble(Operation::personHours).sum();
      boolean earlier = hours == most && IN_ORDER.compare(same.first(), best.first()) < 0;
      if (hours > most || earlier) {
        best = same;
        most = hours;
      }
    }
    return best == null ? null : best.first();
  }

  private void work(Operation operation) {
    TreeSet<Operation> same = byProduct.get(operation.product());
    same.remove(operation);
    if (same.isEmpty()) {
      byProduct.remove(operation.product());
    }
    RoomWork room = rooms.get(operation.room());
    if (room.begun < 0) {
      room.begun = clock.now();
    }
    clock.work((operation.personHours() + changing(operation)) / crew);
    room.ended = clock.now();
    for (Operation free : operation.done(clock.now())) {
      drying.add(free);
    }
  }

  /** Person-hours to change tip and paint before an operation. */
  private double changing(Operation operation) {
    double hours = 0;
    if (operation.product() == null) {
      return hours;
    }
    if (inPump != null && !inPump.equals(operation.product())) {
      hours += catalogue.rate(Task.CHANGE_COATING);
      changes++;
    }
    inPump = operation.product();
    if (operation.tip() != null) {
      if (onGun != null && !onGun.equals(operation.tip())) {
        hours += catalogue.rate(Task.CHANGE_TIP);
      }
      onGun = operation.tip();
    }
    return hours;
  }

  private static List<Plan.Recoat> recoats(FilledBid filled) {
    Map<String, Plan.Recoat> recoats = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .map(line -> line.work().coating())
        .forEach(
            coating -> {
              var entry = coating.row().get("Recoat");
              recoats.putIfAbsent(
                  coating.name(),
                  new Plan.Recoat(
                      coating.name(),
                      coating.recoatHours(),
                      entry.source(),
                      entry.origin().isYours()));
            });
    return List.copyOf(recoats.values());
  }
}
