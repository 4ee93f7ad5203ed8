/**
 * The use cases, each of which reads, computes, checks and writes. They can be called without the
 * command line and print nothing.
 */
package org.wetmil.jobs;
