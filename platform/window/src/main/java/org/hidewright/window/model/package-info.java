/**
 * What the window shows and what becomes of what is done in it, without a single widget, so that all of it can be tested
 * without a screen.
 */
package org.hidewright.window.model;
