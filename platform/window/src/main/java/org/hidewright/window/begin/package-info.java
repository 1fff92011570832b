/** The guided start: a project in a few steps, with the piece beside them. */
package org.hidewright.window.begin;
