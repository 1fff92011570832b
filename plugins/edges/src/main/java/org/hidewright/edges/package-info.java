/** Edges: which are finished when, in what order, with what, how long it takes and how long it waits. */
package org.hidewright.edges;
