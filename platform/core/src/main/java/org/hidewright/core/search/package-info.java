/**
 * Searches: work too long for every keystroke, begun by the maker alone, whose finding is kept in the project. The clock comes from who
 * runs one.
 */
package org.hidewright.core.search;
