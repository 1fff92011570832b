/**
 * What a calculator is asked in a trial, drawn from its declaration: the example, one answer at a time changed, and sets in which every
 * answer is drawn; the same every time. And what is a fault in any case, of declarations and of parts. For whoever tries calculators out before they are given to others.
 */
@Export
@Version("1.1.0")
package org.hidewright.api.trials;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
