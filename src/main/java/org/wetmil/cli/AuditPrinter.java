package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.wetmil.audit.Verdict;
import org.wetmil.jobs.audit.AuditReport;
import org.wetmil.quantity.Count;

/** Prints what an audit found: the page in short, and files that could not be read as errors. */
record AuditPrinter(PrintWriter out, PrintWriter err) {

  void print(AuditReport report, Path output) {
    report
        .leftOut()
        .forEach(
            file ->
                Printer.line(
                    file.readable() ? out : err,
                    file.file()
                        + (file.readable() ? ": left alone. " : ": not read. ")
                        + file.reason()));
    Verdict verdict = report.verdict();
    Stream.of(
            List.of(verdict.proof(), verdict.bids()),
            verdict.right(),
            verdict.ranges(),
            verdict.reasons(),
            verdict.change())
        .flatMap(List::stream)
        .forEach(sentence -> Printer.line(out, sentence));
    verdict.helped().forEach(sentence -> Printer.line(out, sentence));
    Printer.line(
        out,
        "%s: %s read, %s not read, %s found"
            .formatted(
                output,
                Count.of(report.bids(), "bid"),
                Count.of(report.unreadable().size(), "file"),
                Count.of(report.findings(), "mistake")));
    out.flush();
    err.flush();
  }
}
