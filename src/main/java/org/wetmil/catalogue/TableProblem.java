package org.wetmil.catalogue;

/** A cell of the estimator's own tables that cannot be used; the built-in value stays. */
public record TableProblem(
    String table, String sheet, String address, String raw, String expected) {}
