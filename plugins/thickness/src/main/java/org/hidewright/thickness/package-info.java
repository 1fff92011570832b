/** Thickness of leather: what it is called, how it stacks, how it is taken down, what it weighs and what it suits. */
package org.hidewright.thickness;
