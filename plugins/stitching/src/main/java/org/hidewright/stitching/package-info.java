/** Stitch holes, the tools that make them, and the thread that goes through them. */
package org.hidewright.stitching;
