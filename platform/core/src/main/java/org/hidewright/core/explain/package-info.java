/** What a calculator asks and answers, for people who type commands and for programs: schema, keys, a running example. */
package org.hidewright.core.explain;
