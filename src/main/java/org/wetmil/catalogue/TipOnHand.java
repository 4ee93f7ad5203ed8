package org.wetmil.catalogue;

import org.wetmil.trade.TipCode;

/** A tip that the contractor owns; what is not stated is NaN or empty. */
public record TipOnHand(Row row, TipCode tip, double count, double gallonsSprayed, String fit) {}
