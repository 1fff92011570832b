/**
 * What the host asks of whoever writes files: pages as PDF, rows of cells as CSV. The writers are services, made when
 * first asked for.
 */
package org.hidewright.core.paper;
