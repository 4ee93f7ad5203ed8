package org.wetmil.jobs.audit;

/** Is told how far the reading of the bids has come; from several threads. */
@FunctionalInterface
public interface AuditListener {
  void read(int done, int all);
}
