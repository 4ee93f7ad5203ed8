/** The way in from the command line. */
package org.wetmil;
