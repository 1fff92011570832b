/** Held things: how large what goes in can be, measured or by the name of its size. */
package org.hidewright.held;
