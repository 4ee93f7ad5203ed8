/** Whether past jobs came out inside their likely ranges, and which settings would have fit. */
package org.wetmil.audit.range;
