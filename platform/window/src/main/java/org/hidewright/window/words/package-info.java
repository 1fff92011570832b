/** The window’s own texts. */
package org.hidewright.window.words;
