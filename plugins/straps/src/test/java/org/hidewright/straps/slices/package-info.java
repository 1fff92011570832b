/** Folds straps by small steps, to check the bundle against; it uses nothing of the bundle. */
package org.hidewright.straps.slices;
