/** Finding things by their words. */
package org.hidewright.window.find;
