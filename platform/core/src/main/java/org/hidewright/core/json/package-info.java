/** JSON text read with the place of everything in it, and changed without touching what was not changed. */
package org.hidewright.core.json;
