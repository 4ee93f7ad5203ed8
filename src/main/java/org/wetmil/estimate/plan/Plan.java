package org.wetmil.estimate.plan;

import java.util.List;

/**
 * A plan of the work, by what is stated of it: the crew works together, finishes what it has begun,
 * and begins the next room while a coat dries.
 *
 * @param rooms in the order in which they are begun
 * @param days working days until the last coat is laid
 * @param waitingHours working hours in which nothing is dry enough to go on
 * @param coatingChanges changes of colour or product in this order of work
 * @param coatings what the plan takes each coating to dry
 */
public record Plan(
    List<RoomPlan> rooms,
    int days,
    double waitingHours,
    int coatingChanges,
    List<Recoat> coatings) {

  public Plan {
    rooms = List.copyOf(rooms);
    coatings = List.copyOf(coatings);
  }

  /** How long a coating dries before the next coat, and where that is from. */
  public record Recoat(String coating, double hours, String source, boolean yours) {}
}
