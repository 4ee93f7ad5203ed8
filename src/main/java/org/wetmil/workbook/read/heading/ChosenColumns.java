package org.wetmil.workbook.read.heading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;

/**
 * Which column of the sheet holds which input.
 *
 * @param columns by input
 * @param secondRoom a second heading for the room, where number and name stand apart
 * @param numberFirst whether the first of the two is the number
 * @param inches the column of inches beside one of feet, for sizes kept in two columns
 * @param units the column that states the unit of each row
 * @param remarks what had to be settled, and what could not be
 */
public record ChosenColumns(
    Map<InputColumn, Heading> columns,
    Optional<Heading> secondRoom,
    boolean numberFirst,
    Map<InputColumn, Heading> inches,
    Optional<Heading> units,
    List<Remark> remarks) {}
