/** Where a maker begins: projects opened before, and new ones. */
package org.hidewright.window.start;
