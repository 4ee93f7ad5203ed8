/** Purchase records read from comma-separated text; the only room that uses the CSV library. */
package org.wetmil.ledger;
