/**
 * Where the misses come from: one additive model on the log scale, with shrunk effects, the proof
 * that it would have helped, and what to write into the tables.
 */
package org.wetmil.audit.model;
