/** What a run found and figured, as JSON for other programs; the schema lies beside as a file. */
package org.wetmil.jobs.json;
