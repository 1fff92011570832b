/**
 * Declarations: what a calculator asks and answers, as immutable data that forms, commands, project files and
 * documentation are drawn from, and the values that travel under its keys.
 *
 * <p>Authors in Java never build these; they are derived from annotated records by {@link RecordCalculator}.
 */
@Export
@Version("1.3.0")
package org.hidewright.api.declaration;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
