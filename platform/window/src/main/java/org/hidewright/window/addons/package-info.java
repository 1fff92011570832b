/** Bundles: what is installed, what each brings, turned on and off while the program runs. */
package org.hidewright.window.addons;
