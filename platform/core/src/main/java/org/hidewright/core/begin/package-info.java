/**
 * How a project is begun: which templates there are, what can give them their sizes, what the workshop has for them, and what
 * follows from the piece that is made.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.begin;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
