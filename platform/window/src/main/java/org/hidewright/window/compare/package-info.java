/** Two slips of a kind side by side. */
package org.hidewright.window.compare;
