package org.wetmil.estimate.plan;

/**
 * When a room is worked on.
 *
 * @param personHours of its lines, touch-up included
 * @param firstDay the working day on which it is begun, from 1
 * @param lastDay the working day on which its last coat is laid
 */
public record RoomPlan(String floor, String room, double personHours, int firstDay, int lastDay) {

  /** Working days from the first to the last, both included. */
  public int days() {
    return lastDay - firstDay + 1;
  }
}
