/** Lists, installs and removes the bundles of a maker, and turns bundles on and off. */
package org.hidewright.addons;
