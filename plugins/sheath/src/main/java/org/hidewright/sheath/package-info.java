/** A sheath for a knife or tool, with a welt that keeps the blade off the stitches. */
package org.hidewright.sheath;
