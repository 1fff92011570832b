/** A flat pouch of two panels for any round or square thing. */
package org.hidewright.flatpouch;
