/** What a piece costs, what to charge for it, and what an hour and a machine must bring in. */
package org.hidewright.costing;
