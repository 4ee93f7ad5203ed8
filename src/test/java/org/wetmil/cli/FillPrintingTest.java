package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillRun;
import org.wetmil.jobs.Inputs;
import org.wetmil.jobs.Outputs;
import picocli.CommandLine;

/** What {@code fill} prints and how it ends. */
class FillPrintingTest {
  private static final String FINDING = "(\\S+: )?(note|warning|stop): [a-z-]+: .+\\.";

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @TempDir Path folder;

  @AfterEach
  void restoreTheMachine() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  @Test
  void everyFindingHasALineAndTheWorkbookAClosingOne() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));

    Ran ran = Ran.fill(bid);

    List<String> findings = ran.out().subList(0, ran.out().size() - 1);
    assertThat(findings).allMatch(line -> line.startsWith(bid + ": "));
    assertThat(findings)
        .extracting(line -> line.substring((bid + ": ").length()))
        .allMatch(line -> line.matches(FINDING))
        .anyMatch(line -> line.startsWith("Bid!G3: warning: orifice-too-coarse: "))
        .anyMatch(line -> line.startsWith("Bid!F4: stop: unknown-coating: \"nonesuch\""));
    assertThat(ran.out().get(findings.size()))
        .matches(
            ".*job-filled\\.xlsx: 3 rows read, 2 filled, 1 not filled; 1 stop, \\d+ warnings?,"
                + " \\d+ notes?; paint \\d+\\.\\d gal, labour \\d+\\.\\d h; recommended"
                + " instead of planned tips on 1 line: paint 2\\.0 gal less, spraying the same");
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void verboseSaysWhatWasTakenFromWhichColumnAndHowLongItTook() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));

    Ran ran = Ran.fill(bid, "--verbose");

    assertThat(ran.err()).hasSize(2);
    assertThat(ran.err().get(0))
        .startsWith(bid + ": Bid: headings in row 1, 3 lines in rows 2 to 4, US units; Room from A")
        .contains("Surface from B");
    assertThat(ran.err().get(1)).matches(".*job\\.xlsx: took \\d+\\.\\d\\d s");
    assertThat(ran.out()).isEqualTo(Ran.fill(bid, "--force").out());
  }

  @Test
  void onATerminalSeveritiesHaveAColourBesideTheirWord() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    StringWriter out = new StringWriter();
    CommandLine commandLine = WetmilCommand.commandLine().setOut(new PrintWriter(out, true));
    commandLine.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.ON));

    commandLine.execute("fill", bid.toString());

    String escape = "\u001b";
    assertThat(out.toString())
        .contains(": " + escape + "[1m" + escape + "[31mstop" + escape, "33mwarning", ": note: ");
    assertThat(out.toString().replaceAll(escape + "\\[[0-9;]*m", "").lines())
        .isEqualTo(Ran.fill(bid, "--force").out());
  }

  @Test
  void whatWeMadeOfBidsIsNoBidOfAFolder() throws IOException {
    Path bid = folder.resolve("clinic-refit.xlsx");
    Files.copy(Path.of("sample-workbooks", "clinic-refit.xlsx"), bid);
    Files.copy(
        Path.of("sample-workbooks", "past-bids-audited.xlsx"), folder.resolve("audited.xlsx"));
    assertThat(Ran.fill(bid, "--values").code()).isZero();

    Ran ran = Ran.fill(folder, "--force");

    assertThat(ran.code()).isZero();
    assertThat(ran.err())
        .anyMatch(line -> line.contains("customer.xlsx") && line.contains("a copy for a customer"))
        .anyMatch(line -> line.contains("audited.xlsx") && line.contains("how past bids came out"));
  }

  @Test
  void copyForTheCustomerNeedsPrices() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));

    Ran ran = Ran.fill(bid, "--values");

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(ran.err())
        .containsExactly(
            bid
                + ": no copy for the customer without a price; state the setting Labour rate and"
                + " the prices of the coatings.");
    assertThat(folder.resolve("job-filled.xlsx")).exists();
    assertThat(folder.resolve("job-customer.xlsx")).doesNotExist();
  }

  @Test
  void quietLeavesTheClosingLine() {
    Ran ran = Ran.fill(SmallBid.write(folder.resolve("job.xlsx")), "--quiet");

    assertThat(ran.out()).singleElement().asString().contains("3 rows read");
  }

  @ParameterizedTest
  @CsvSource({"note, 1", "warning, 1", "stop, 1", "STOP, 1"})
  void findingsFailTheRunFromTheSeverityThatIsNamed(String severity, int code) {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));

    assertThat(Ran.fill(bid, "--fail-on", severity).code()).isEqualTo(code);
  }

  @Test
  void lesserFindingsDoNotFailTheRun() {
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> workbook.getSheetAt(0).removeRow(workbook.getSheetAt(0).getRow(3)));

    assertThat(Ran.fill(bid).code()).isZero();
    assertThat(Ran.fill(bid, "--force", "--fail-on", "stop").code()).isZero();
    assertThat(Ran.fill(bid, "--force", "--fail-on", "warning").code()).isEqualTo(1);
  }

  @Test
  void theHighestOfSeveralCodesIsGiven() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));

    Ran ran = Ran.fill(folder.resolve("none.xlsx"), bid, "--fail-on", "note");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.out()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"--date, 5/1/2026", "--fail-on, grave", "--nonsense, x"})
  void aCommandLineThatIsNotUnderstoodGivesTwo(String option, String value) {
    Ran ran = Ran.fill(SmallBid.write(folder.resolve("job.xlsx")), option, value);

    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().get(0)).doesNotContain("Exception").containsAnyOf(value, option);
  }

  @Test
  void aFaultOfTheProgramIsOneSentenceAndTheRestIsDone() {
    Run run = withFault(false);

    assertThat(run.code()).isEqualTo(4);
    assertThat(run.err()).singleElement().asString().contains("a.xlsx: a fault of the program");
    assertThat(run.out()).singleElement().asString().contains("b-filled.xlsx: 3 rows read");
  }

  @Test
  void theTraceOfAFaultIsShownWhenAskedFor() {
    assertThat(withFault(true).err())
        .hasSizeGreaterThan(5)
        .anyMatch(line -> line.contains("\tat "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
  void theLanguageAndZoneOfTheMachineChangeNothing(String tag) {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Path here = folder.resolve("here.xlsx");
    Path there = folder.resolve("there.xlsx");
    Locale.setDefault(Locale.ROOT);
    Ran expected = Ran.fill(bid, "--out", here);

    Locale.setDefault(Locale.forLanguageTag(tag));
    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
    Ran ran = Ran.fill(bid, "--out", there);

    assertThat(there).hasSameBinaryContentAs(here);
    assertThat(ran.out().subList(0, ran.out().size() - 1))
        .isEqualTo(expected.out().subList(0, expected.out().size() - 1));
  }

  @Test
  void lineBreaksAndEscapesOfNamesDoNotBreakLines() {
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook ->
                workbook
                    .getSheetAt(0)
                    .getRow(3)
                    .getCell(5)
                    .setCellValue("no\u001b[31m\n\u2028such"));

    Ran ran = Ran.fill(bid);

    assertThat(ran.out()).allMatch(line -> line.startsWith(folder.toString()));
    assertThat(String.join("", ran.out())).doesNotContain("\u001b", "\u2028");
  }

  private record Run(int code, List<String> out, List<String> err) {}

  private Run withFault(boolean trace) {
    SmallBid.write(folder.resolve("a.xlsx"));
    SmallBid.write(folder.resolve("b.xlsx"));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    FillJob job = new FillJob(LocalDate.of(2026, 1, 5), "test", false);
    Inputs inputs = Inputs.of(List.of(folder));
    Outcome outcome = new Outcome(null);
    Printer printer =
        new Printer(
            WetmilCommand.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err)),
            true,
            trace);
    FillRun.Filler faulty =
        (input, output, customer) -> {
          if (input.endsWith("a.xlsx")) {
            throw new IllegalStateException("injected");
          }
          return job.fill(input, output);
        };
    new FillRun(faulty, List.of(printer, outcome)).fill(inputs, new Outputs(null, inputs));
    return new Run(
        outcome.code(), out.toString().lines().toList(), err.toString().lines().toList());
  }
}
