/** Values, notices and labels put into words: language, units, decimal mark, rounding at the edge. */
package org.hidewright.core.wording;
