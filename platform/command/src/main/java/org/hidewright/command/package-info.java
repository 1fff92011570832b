/** Headless commands, drawn from the declarations of whatever calculators are installed. */
package org.hidewright.command;
