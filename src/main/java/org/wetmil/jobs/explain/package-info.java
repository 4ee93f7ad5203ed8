/** Explains how one line of a bid came out: the line is found, told step by step, and worded. */
package org.wetmil.jobs.explain;
