package org.wetmil.formula;

/** Where a formula finds a number; rooms above say which cells there are. */
public interface Place {}
