package org.wetmil.estimate.plan;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.trade.TipCode;

/** A piece of work that the crew does in one go: a room made ready, or one coat of one line. */
final class Operation {
  private final int room;
  private final int order;
  private final Product product;
  private final TipCode tip;
  private final double personHours;
  private final double recoatHours;
  private final List<Operation> after = new ArrayList<>();
  private int open;
  private double readyAt;

  /**
   * @param room its place among the rooms
   * @param order its place among all operations
   * @param product null for a room made ready
   * @param tip null where no tip serves, or for a room made ready
   * @param recoatHours hours until a coat can follow on it
   */
  Operation(
      int room, int order, Product product, TipCode tip, double personHours, double recoatHours) {
    this.room = room;
    this.order = order;
    this.product = product;
    this.tip = tip;
    this.personHours = personHours;
    this.recoatHours = recoatHours;
  }

  /** A coating in a colour: what is in pump and hose. */
  record Product(String coating, String colour) {}

  /** Lets another begin no sooner than this has dried. */
  void before(Operation next) {
    after.add(next);
    next.open++;
  }

  /**
   * Marks it as done.
   *
   * @return those that wait for nothing but drying now
   */
  List<Operation> done(double hour) {
    List<Operation> free = new ArrayList<>();
    for (Operation next : after) {
      next.readyAt = Math.max(next.readyAt, hour + recoatHours);
      if (--next.open == 0) {
        free.add(next);
      }
    }
    return free;
  }

  int room() {
    return room;
  }

  int order() {
    return order;
  }

  Product product() {
    return product;
  }

  TipCode tip() {
    return tip;
  }

  double personHours() {
    return personHours;
  }

  double readyAt() {
    return readyAt;
  }
}
