/** Tables of the workshop with faults of their own. */
package org.hidewright.testkit.tables;
