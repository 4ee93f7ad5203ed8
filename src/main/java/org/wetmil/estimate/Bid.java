package org.wetmil.estimate;

import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.quantity.UnitSystem;

/**
 * A workbook as read: its lines, and the tables it is to be computed with.
 *
 * @param job name of the job
 * @param system units of the job's own figures
 * @param problems cells of the estimator's tables that could not be used
 * @param remarks what the reader saw besides
 */
public record Bid(
    String job,
    UnitSystem system,
    Catalogue catalogue,
    List<BidSheet> sheets,
    List<TableProblem> problems,
    List<Remark> remarks) {
  public Bid {
    sheets = List.copyOf(sheets);
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
  }
}
