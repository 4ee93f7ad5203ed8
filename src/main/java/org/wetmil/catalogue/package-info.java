/**
 * What the estimator owns, buys and assumes: coatings, surfaces, sprayers, tips on hand, rates and
 * settings. The tables are resources, read strictly.
 */
package org.wetmil.catalogue;
