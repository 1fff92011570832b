/** Projects: slips side by side, what was typed on them, links between them, and the file that keeps it all. */
package org.hidewright.core.project;
