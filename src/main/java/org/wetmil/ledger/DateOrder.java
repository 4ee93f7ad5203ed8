package org.wetmil.ledger;

/** Which of day and month comes first in dates such as 3/4/26. */
public enum DateOrder {
  MONTH_FIRST,
  DAY_FIRST
}
