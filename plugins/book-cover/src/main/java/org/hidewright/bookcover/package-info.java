/** A cover for a notebook, book or passport, held by two sleeves. */
package org.hidewright.bookcover;
