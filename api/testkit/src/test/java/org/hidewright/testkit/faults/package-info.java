/** Small calculators with one fault each, and two without, to see that a contract finds the one and lets the other pass. */
package org.hidewright.testkit.faults;
