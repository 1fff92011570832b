/** Tells the core which calculators the installed bundles publish. */
package org.hidewright.catalogue;
