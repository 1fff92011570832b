/** Where the parts of an item lie on panels and hides: searched for, checked, drawn, and what the leather of it costs. */
package org.hidewright.layout;
