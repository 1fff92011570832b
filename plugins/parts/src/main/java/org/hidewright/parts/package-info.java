/** Parts: a piece drawn part by part, with its holes, stitch lines, folds and seams, for patterns and for other slips to take from. */
package org.hidewright.parts;
