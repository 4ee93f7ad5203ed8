package org.wetmil.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadOptions;

/** How many lines of an invented bid are filled and checked in a second, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
    value = 2,
    jvmArgs = {"-XX:+UseSerialGC", "-Xmx1g"})
public class EstimateBenchmark {
  /** A large bid; what a run holds at once grows with it, and so does the collector's work. */
  private static final int LINES = 1_000;

  private Bid bid;
  private FilledBid filled;

  @Setup
  public void read() throws IOException {
    Path file = Files.createTempFile("estimate-benchmark", ".xlsx");
    try {
      bid = BidReader.read(BigBid.write(file, LINES), ReadOptions.USUAL).bid();
    } finally {
      Files.delete(file);
    }
    filled = Estimator.fill(bid);
  }

  @Benchmark
  @OperationsPerInvocation(LINES)
  public FilledBid fill() {
    return Estimator.fill(bid);
  }

  @Benchmark
  @OperationsPerInvocation(LINES)
  public Iterable<Finding> check() {
    return Checks.run(filled);
  }
}
