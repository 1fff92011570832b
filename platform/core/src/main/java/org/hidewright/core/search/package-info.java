/**
 * Searches: work too long for every keystroke, begun by the maker alone, whose finding is kept in the project. The clock comes from who
 * runs one.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.search;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
