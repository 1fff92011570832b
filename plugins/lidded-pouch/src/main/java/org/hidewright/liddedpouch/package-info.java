/** A pouch with a gusset and a lid, for things as deep as they are. */
package org.hidewright.liddedpouch;
