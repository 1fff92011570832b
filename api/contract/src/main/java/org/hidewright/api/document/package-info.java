/**
 * Documents as a maker takes them to the bench, neutral to the page and the file they end in.
 *
 * <p>A {@link Document} is a list of {@link Section}s, a section a list of {@link Block}s. Every text in it is final:
 * translated into the document's language, its numbers formatted, its units written. Writers arrange and never word.
 *
 * <p>A bundle adds sections of its own by registering a {@link SectionContributor} as a service; one of them may
 * stand apart as a document of its own.
 *
 * <p>All types are immutable and made through their factories and builders.
 */
@Export
@Version("1.2.0")
package org.hidewright.api.document;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
