/** A wallet that folds once, for notes and cards. */
package org.hidewright.foldingwallet;
