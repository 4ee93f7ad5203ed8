/** The figures that a past bid was made with against those of today. */
package org.wetmil.audit.tables;
