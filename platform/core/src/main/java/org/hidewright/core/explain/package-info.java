/** What a calculator asks and answers, for people who type commands and for programs: schema, keys, a running example. */
@Export
@Version("1.0.0")
package org.hidewright.core.explain;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
