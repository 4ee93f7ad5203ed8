package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.SmallBid;
import org.wetmil.jobs.Inputs;
import org.wetmil.jobs.Outputs;
import org.wetmil.workbook.opc.Passwords;

/** Where the results of {@code fill} go, and what they never go over. */
class FillOutputsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "job.xlsx, job-filled.xlsx",
    "job.xlsm, job-filled.xlsm",
    "job.xltx, job-filled.xlsx",
    "job.xltm, job-filled.xlsm",
    "job.v2.xlsx, job.v2-filled.xlsx"
  })
  void theResultStandsBesideItsInputUnderItsEnding(String input, String output) {
    Ran ran = Ran.fill(bid(input));

    assertThat(ran.code()).isZero();
    assertThat(Machine.names(folder)).containsExactly(output, input);
    assertThat(ran.out().get(ran.out().size() - 1)).startsWith(folder.resolve(output) + ": ");
  }

  @Test
  void anEndingThatTheContentBeliesIsMendedInTheResult() throws IOException {
    Files.move(bid("job.xlsm"), folder.resolve("job.xlsx"));

    assertThat(Ran.fill(folder.resolve("job.xlsx")).code()).isZero();
    assertThat(Machine.names(folder)).containsExactly("job-filled.xlsm", "job.xlsx");
  }

  @Test
  void anOlderResultIsWrittenOverOnlyByForce() throws IOException {
    Path bid = bid("job.xlsx");
    Path older = Files.writeString(folder.resolve("job-filled.xlsx"), "older");

    Ran refused = Ran.fill(bid);
    assertThat(refused.code()).isEqualTo(3);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err())
        .singleElement()
        .asString()
        .contains(older.toString(), "--number", "--force", "--out");
    assertThat(older).hasContent("older");

    assertThat(Ran.fill(bid, "--force").code()).isZero();
    assertThat(Files.size(older)).isGreaterThan(1000);
  }

  @Test
  void aNumberKeepsOlderResults() throws IOException {
    Path bid = bid("job.xlsx");
    Path older = Files.writeString(folder.resolve("job-filled.xlsx"), "older");

    assertThat(Ran.fill(bid, "--number").code()).isZero();
    assertThat(Ran.fill(bid, "--number").code()).isZero();
    assertThat(Machine.names(folder))
        .containsExactly("job-filled-2.xlsx", "job-filled-3.xlsx", "job-filled.xlsx", "job.xlsx");
    assertThat(older).hasContent("older");
  }

  @Test
  void aNumberKeepsTheFileThatOutNames() throws IOException {
    Path older = Files.writeString(folder.resolve("second.xlsx"), "older");

    assertThat(Ran.fill(bid("job.xlsx"), "--number", "--out", older).code()).isZero();
    assertThat(Machine.names(folder)).containsExactly("job.xlsx", "second-2.xlsx", "second.xlsx");
    assertThat(older).hasContent("older");
  }

  @ParameterizedTest
  @CsvSource({
    "job-filled.xlsx, job-customer.xlsx",
    "job-filled-2.xlsx, job-filled-2-customer.xlsx",
    "second.xlsx, second-customer.xlsx"
  })
  void theCustomersCopyIsNamedAfterTheOutput(String output, String copy) {
    Outputs outputs = new Outputs(null, Inputs.of(List.of(bid("job.xlsx")), Passwords.NONE));

    assertThat(outputs.customer(folder.resolve(output))).isEqualTo(folder.resolve(copy));
  }

  @Test
  void outNamesTheFileForOneWorkbook() {
    Path out = folder.resolve("sub/RESULT.XLSX");

    assertThat(Ran.fill(bid("job.xlsx"), "--out", out).code()).isZero();
    assertThat(out).isRegularFile();
  }

  @Test
  void outIsAFolderWhenItDoesNotEndLikeAWorkbook() {
    Path out = folder.resolve("made/now");

    assertThat(Ran.fill(bid("job.xlsx"), "--out", out).code()).isZero();
    assertThat(out.resolve("job-filled.xlsx")).isRegularFile();
  }

  @Test
  void outIsAFolderForSeveralInputsAndForAFolder() throws IOException {
    Path out = folder.resolve("all.xlsx");
    assertThat(Ran.fill(bid("a.xlsx"), bid("b.xlsx"), "--out", out).code()).isZero();
    assertThat(Machine.names(out)).containsExactly("a-filled.xlsx", "b-filled.xlsx");

    Path jobs = Files.createDirectory(folder.resolve("jobs"));
    SmallBid.write(jobs.resolve("c.xlsx"));
    Path other = folder.resolve("other.xlsx");
    assertThat(Ran.fill(jobs, "--out", other).code()).isZero();
    assertThat(Machine.names(other)).containsExactly("c-filled.xlsx");
  }

  @ParameterizedTest
  @CsvSource({"job.xlsx, out.xlsm", "job.xlsm, out.xlsx", "job.xltm, out.xlsx"})
  void anEndingThatDoesNotSuitTheInputIsRefused(String input, String output) {
    Ran ran = Ran.fill(bid(input), "--out", folder.resolve(output));

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains(output, "a name that ends in .xls");
    assertThat(Machine.names(folder)).containsExactly(input);
  }

  @Test
  void inputsThatWouldGetOneNameAreNumbered() throws IOException {
    for (String sub : List.of("x", "y", "z")) {
      Files.createDirectory(folder.resolve(sub));
      bid(sub + "/job.xlsx");
    }
    Path out = folder.resolve("out");

    Ran ran =
        Ran.fill(
            folder.resolve("x"), folder.resolve("y/job.xlsx"), folder.resolve("z"), "--out", out);

    assertThat(ran.code()).isZero();
    assertThat(Machine.names(out))
        .containsExactly("job-filled-2.xlsx", "job-filled-3.xlsx", "job-filled.xlsx");
  }

  @Test
  void namesThatDifferInCaseAloneAreNumberedToo() throws IOException {
    Files.createDirectory(folder.resolve("x"));
    Path out = folder.resolve("out");

    Ran.fill(bid("job.xlsx"), bid("x/JOB.xlsx"), "--out", out);

    assertThat(Machine.names(out)).containsExactly("JOB-filled-2.xlsx", "job-filled.xlsx");
  }

  @Test
  void noInputOfTheRunIsWrittenOver() throws IOException {
    Path bid = bid("job.xlsx");
    Path own = bid("job-filled.xlsx");
    byte[] before = Files.readAllBytes(own);

    assertThat(Ran.fill(bid, own, "--force").code()).isZero();
    assertThat(own).hasBinaryContent(before);
    assertThat(Machine.names(folder))
        .containsExactly(
            "job-filled-2.xlsx", "job-filled-filled.xlsx", "job-filled.xlsx", "job.xlsx");
  }

  @Test
  void theInputIsNotTheOutputUnderAnySpelling() throws IOException {
    Path bid = bid("job.xlsx");
    byte[] before = Files.readAllBytes(bid);
    Files.createDirectory(folder.resolve("sub"));

    for (Path out :
        List.of(
            bid,
            folder.resolve("sub/../job.xlsx"),
            Machine.link(folder.resolve("link.xlsx"), bid))) {
      Ran ran = Ran.fill(bid, "--force", "--out", out);
      assertThat(ran.code()).isEqualTo(3);
      assertThat(ran.err()).singleElement().asString().contains("input itself");
    }
    assertThat(bid).hasBinaryContent(before);
  }

  @Test
  void tablesThatAreReadAreNotWrittenOver() throws IOException {
    Path tables =
        Files.copy(Path.of("sample-workbooks", "gym-hall.xlsx"), folder.resolve("job-filled.xlsx"));
    byte[] before = Files.readAllBytes(tables);

    Ran ran = Ran.fill(bid("job.xlsx"), "--force", "--tables", tables);

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("job-filled.xlsx", "input itself");
    assertThat(tables).hasBinaryContent(before);
  }

  @Test
  void whatKeepsTheCustomersCopyAwayIsSaidBeforeTheOtherFileIsMade() throws IOException {
    Path bid =
        Files.copy(Path.of("sample-workbooks", "clinic-refit.xlsx"), folder.resolve("job.xlsx"));
    Path older = Files.writeString(folder.resolve("job-customer.xlsx"), "older");

    Ran ran = Ran.fill(bid, "--values");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("job-customer.xlsx", "there already");
    assertThat(older).hasContent("older");
    assertThat(Machine.names(folder)).containsExactly("job-customer.xlsx", "job.xlsx");
  }

  @Test
  void aLinkToAnotherInputIsNotWrittenThrough() throws IOException {
    Path bid = bid("job.xlsx");
    Path other = bid("other.xlsx");
    byte[] before = Files.readAllBytes(other);
    Machine.link(folder.resolve("job-filled.xlsx"), other);

    assertThat(Ran.fill(bid, other, "--force").code()).isZero();
    assertThat(other).hasBinaryContent(before);
  }

  @Test
  void aFolderInTheWayOfTheResultIsSaid() throws IOException {
    Path bid = bid("job.xlsx");
    Files.createDirectory(folder.resolve("job-filled.xlsx"));

    Ran ran = Ran.fill(bid, "--force");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("this is a folder");
    assertThat(Machine.names(folder)).containsExactly("job-filled.xlsx", "job.xlsx");
  }

  @Test
  void aFileInTheWayOfTheFolderIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "mine");

    Ran direct = Ran.fill(bid("job.xlsx"), "--out", file);
    Ran beneath = Ran.fill(bid("job.xlsx"), "--out", file.resolve("deeper"));

    assertThat(List.of(direct.code(), beneath.code())).containsOnly(3);
    assertThat(direct.err()).singleElement().asString().contains("a file, not a folder");
    assertThat(beneath.err()).singleElement().asString().contains("cannot be made");
    assertThat(file).hasContent("mine");
  }

  private Path bid(String name) {
    return SmallBid.write(folder.resolve(name));
  }
}
