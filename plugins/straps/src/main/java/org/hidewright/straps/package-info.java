/** Straps: folds and what they take, holes mapped from the folded strap to the flat one, keepers, belts and strips. */
package org.hidewright.straps;
