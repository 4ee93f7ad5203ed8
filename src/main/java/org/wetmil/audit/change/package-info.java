/** What to write into the tables of the next bid. */
package org.wetmil.audit.change;
