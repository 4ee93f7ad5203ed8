package org.wetmil.catalogue;

import org.wetmil.trade.TipCode;

/** Flow caught in a bucket with a tip and a coating; it replaces the discharge coefficient. */
public record BucketTest(Row row, TipCode tip, String coating, double gunPsi, double flowGpm) {}
