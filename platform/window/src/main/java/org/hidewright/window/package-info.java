/** The program as a window: slips side by side on one project, beside the piece they make. */
package org.hidewright.window;
