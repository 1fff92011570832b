/** Slips side by side: answers, questions with an editor each, checks where they arise. */
package org.hidewright.window.slip;
