/** The workshop: its tables and rows as they are shown and changed, what was measured, and which projects take a row. */
package org.hidewright.window.workshop;
