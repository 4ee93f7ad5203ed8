/**
 * What can be wrong with a bid: each check is a small record with its reason and its source, and a
 * pure function that gives findings.
 */
package org.wetmil.checks;
