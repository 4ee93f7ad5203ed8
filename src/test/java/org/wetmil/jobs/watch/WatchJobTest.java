package org.wetmil.jobs.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.workbook.WorkbookException;

/** A folder on a real disk, and a clock that the test moves. */
class WatchJobTest implements FillListener {
  @TempDir Path folder;

  private final List<String> told = new ArrayList<>();
  private Duration now = Duration.ZERO;
  private WatchJob job;

  @Test
  void aBidIsFilledWhenItIsSavedAndOverItsResultWhenItIsSavedAgain() {
    SmallBid.write(folder.resolve("earlier.xlsx"));
    watch();
    pass(60);
    assertThat(told).isEmpty();

    SmallBid.write(folder.resolve("bid.xlsx"));
    pass(2);
    assertThat(told).containsExactly("bid-filled.xlsx");

    SmallBid.write(folder.resolve("bid.xlsx"), book -> SmallBid.row(book.getSheetAt(0), 9, "Hall"));
    pass(60);
    assertThat(told).containsExactly("bid-filled.xlsx", "bid-filled.xlsx");
    assertThat(names()).containsExactly("bid-filled.xlsx", "bid.xlsx", "earlier.xlsx");
  }

  @Test
  void aResultThatSomebodyWorkedOnIsKept() throws IOException {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));
    SmallBid.write(folder.resolve("bid-filled.xlsx"));
    watch();
    save(bid);
    pass(2);
    assertThat(told).containsExactly("bid-filled-2.xlsx");

    save(folder.resolve("bid-filled-2.xlsx"));
    pass(60);
    assertThat(told).hasSize(1);

    save(bid);
    pass(2);
    assertThat(told).containsExactly("bid-filled-2.xlsx", "bid-filled-3.xlsx");
  }

  @Test
  void aResultThatIsOpenInAnotherProgramIsLeftToIt() throws IOException {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));
    watch();
    save(bid);
    pass(2);
    Path lock = Files.createFile(folder.resolve("~$bid-filled.xlsx"));
    save(bid);
    pass(2);
    Files.move(lock, folder.resolve(".~lock.bid-filled.xlsx#"));
    save(bid);
    pass(2);
    Files.delete(folder.resolve(".~lock.bid-filled.xlsx#"));
    save(bid);
    pass(2);

    assertThat(told)
        .containsExactly(
            "bid-filled.xlsx", "bid-filled-2.xlsx", "bid-filled-2.xlsx", "bid-filled.xlsx");
  }

  @Test
  void lockFilesAndWhatIsNoSpreadsheetAreLeftAlone() throws IOException {
    watch();
    SmallBid.write(folder.resolve("~$bid.xlsx"));
    Files.writeString(folder.resolve("notes.txt"), "call the painter");
    pass(60);

    assertThat(told).isEmpty();
  }

  @Test
  void aHalfWrittenBidIsWaitedForAndFilledWhenItIsWhole() throws IOException {
    byte[] whole = Files.readAllBytes(SmallBid.write(folder.resolve("../whole.xlsx")));
    watch();
    Files.write(folder.resolve("bid.xlsx"), Arrays.copyOf(whole, whole.length / 2));
    pass(15);
    assertThat(told).isEmpty();

    Files.write(folder.resolve("bid.xlsx"), whole);
    pass(2);
    assertThat(told).containsExactly("bid-filled.xlsx");
  }

  @Test
  void whatNeverBecomesAWorkbookIsTold() throws IOException {
    watch();
    Files.writeString(folder.resolve("bid.xlsx"), "no workbook at all");
    Files.writeString(folder.resolve("old.xls"), "another kind");
    pass(30);

    assertThat(told).containsExactly("refused bid.xlsx", "passed over old.xls");
  }

  @Test
  void aFileIsNoFolderAndNorIsAName() {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));

    assertThatThrownBy(() -> watch(bid))
        .isInstanceOf(WorkbookException.class)
        .hasMessageContaining("this is a file, and watch takes a folder");
    assertThatThrownBy(() -> watch(folder.resolve("bids")))
        .isInstanceOf(WorkbookException.class)
        .hasMessageContaining("no such folder");
  }

  private void watch() {
    watch(folder);
  }

  private void watch(Path watched) {
    job =
        new WatchJob(
            watched,
            new FillJob(LocalDate.of(2026, 1, 5), "test", true)::fill,
            this,
            other -> told.add("passed over " + other.file().getFileName()));
    job.look(now);
  }

  /** Looks twice a second, as the command does. */
  private void pass(int seconds) {
    for (int i = 0; i <= 2 * seconds; i++) {
      job.look(now);
      now = now.plusMillis(500);
    }
  }

  /** As a spreadsheet program does: the same content is another file to the disk. */
  private static void save(Path file) throws IOException {
    Files.setLastModifiedTime(
        file, FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() + 10_000));
  }

  private List<String> names() {
    return Arrays.stream(folder.toFile().list()).sorted().toList();
  }

  @Override
  public void filled(FillReport report) {
    told.add(report.output().getFileName().toString());
  }

  @Override
  public void refused(Path input, String sentence) {
    told.add("refused " + input.getFileName());
  }

  @Override
  public void fault(Path input, Throwable fault) {
    throw new AssertionError(fault);
  }
}
