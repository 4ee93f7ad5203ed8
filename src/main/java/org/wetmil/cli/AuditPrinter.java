package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.wetmil.audit.Verdict;
import org.wetmil.jobs.audit.AuditReport;

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
        "%s: %d bids read, %d files not read, %d mistakes found"
            .formatted(output, report.bids(), report.unreadable().size(), report.findings()));
    out.flush();
    err.flush();
  }
}
