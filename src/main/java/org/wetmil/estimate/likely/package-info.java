/**
 * How sure a figure is: the range from 10 to 90 % of paint, hours and money, from the few factors
 * that a job turns on. The only package with the library's distributions for them.
 */
package org.wetmil.estimate.likely;
