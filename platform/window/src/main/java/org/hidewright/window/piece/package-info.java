/** The piece that is made, drawn as the documents draw it. */
package org.hidewright.window.piece;
