package org.hidewright.window.model;

/** What is to be changed has gone since it was shown: somebody was faster than the window. */
final class Gone extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Gone(String what) {
        super(what, null, false, false);
    }
}
