/** What is installed: calculators by id, which bundle brought each, and what is wrong with those that cannot be used. */
package org.hidewright.core.catalogue;
