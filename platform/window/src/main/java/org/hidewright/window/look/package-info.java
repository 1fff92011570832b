/** Colours, letters and lines of the window. */
package org.hidewright.window.look;
