package org.wetmil.workbook.fill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.fill.page.BidPage;
import org.wetmil.workbook.fill.page.Coin;
import org.wetmil.workbook.look.Look;

/**
 * A workbook for the customer: the Bid page alone, as values. It is made anew rather than cut from
 * the filled one, so that nothing of that can be left in it.
 */
public final class CustomerCopy {
  private CustomerCopy() {}

  /**
   * Writes the copy.
   *
   * @param job a job that has a price
   */
  public static void write(FilledJob job, FillStamp stamp, Path output, boolean overwrite) {
    try (LeanWorkbook workbook = new LeanWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("Bid");
      Look look = new Look(workbook);
      Coin coin = new Coin(job.filled(), new BasisBook(job.filled()), look);
      new BidPage(sheet, look, job.filled())
          .write(job.price().price().orElseThrow(), null, coin, stamp.date());
      POIXMLProperties.CoreProperties properties = workbook.getProperties().getCoreProperties();
      properties.setTitle(job.filled().bid().job());
      properties.setCreator(job.filled().bid().catalogue().text(Setting.CONTRACTOR));
      NewWorkbook.write(workbook, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
