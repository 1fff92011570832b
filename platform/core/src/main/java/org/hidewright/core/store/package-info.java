/**
 * Project files on disk: opened as they are, saved whole or not at all, put right after a save that was cut short. The
 * one room of the core that reads and writes files.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.store;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
