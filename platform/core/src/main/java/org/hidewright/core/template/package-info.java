/**
 * Templates written as a text: questions, expressions and a drawing, in one JSON file and without Java.
 *
 * <p>A template is a calculator that answers an item. It asks its own questions, works expressions out of them, and has
 * another calculator draw what comes of it.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.template;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
