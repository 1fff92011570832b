/** Holes, slits and posts of the fittings that close, hold and carry leather. */
package org.hidewright.fasteners;
