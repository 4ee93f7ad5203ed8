/**
 * The rules of measurement: how a room's sizes and its openings become the area that is painted and
 * the area that is paid for.
 */
package org.wetmil.measure;
