/** The job card of a worked project: as a document for paper, as JSON, and as rows for a spreadsheet. */
package org.hidewright.core.jobcard;
