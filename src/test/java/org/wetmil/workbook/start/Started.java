package org.wetmil.workbook.start;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.jobs.StartJob;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;

/** A bid that was made from a room list, as fill reads it. */
record Started(Path file, Start.Made made, FilledBid filled, List<Finding> findings) {

  static Started of(Path list) {
    Path bid = StartJob.usualName(list);
    Start.Made made = StartJob.make(list, Passwords.NONE, bid, true);
    FilledBid filled = Estimator.fill(BidReader.read(bid).bid());
    return new Started(bid, made, filled, Checks.run(filled));
  }

  FilledLine line(String room, String surface) {
    return filled
        .lines()
        .filter(line -> line.line().text(InputColumn.ROOM).equals(room))
        .filter(line -> line.line().text(InputColumn.SURFACE).equals(surface))
        .findFirst()
        .orElseThrow();
  }

  /** A cell as it stands. */
  String cell(String room, String surface, InputColumn column) {
    return line(room, surface).line().text(column);
  }

  List<String> surfaces(String room) {
    return filled
        .lines()
        .map(FilledLine::line)
        .filter(line -> line.text(InputColumn.ROOM).equals(room))
        .map(line -> line.text(InputColumn.SURFACE))
        .toList();
  }

  List<String> stops(String room, String surface) {
    BidLine line = line(room, surface).line();
    return findings.stream()
        .filter(each -> each.severity() == Severity.STOP && each.spot().row() == line.row())
        .map(Finding::message)
        .toList();
  }
}
