/**
 * The workshop: tables of what a maker owns, buys and has measured. A bundle declares a table, or adds columns to one that
 * is there; calculators never see it, since a row reaches them as answers to their own questions.
 */
@Export
@Version("1.0.0")
package org.hidewright.api.workshop;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
