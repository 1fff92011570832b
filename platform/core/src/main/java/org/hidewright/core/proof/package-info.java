/**
 * What is looked at in texts that a bundle carries, templates and tables, before they are given to others: whether they are complete,
 * and what becomes of a template over all that may be asked of it. For authors who write no Java, and so have no tests to run.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.proof;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
