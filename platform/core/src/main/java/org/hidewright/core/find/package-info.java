/**
 * Finding things by the words they are told in: calculators and templates, what they ask, the slips of a project and what is told
 * of them.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.find;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
