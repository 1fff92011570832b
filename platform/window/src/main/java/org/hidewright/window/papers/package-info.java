/** Documents of a project: looked at, printed, written as a packet. */
package org.hidewright.window.papers;
