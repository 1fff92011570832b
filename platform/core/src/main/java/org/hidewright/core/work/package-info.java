/** Working slips out: what was typed is read, links are followed in dependency order, only what changed is done again. */
package org.hidewright.core.work;
