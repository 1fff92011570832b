package org.hidewright.command;

/** An argument that cannot be used; the message is for whoever typed it, in their language. */
final class BadArgument extends Exception {
    private static final long serialVersionUID = 1L;

    BadArgument(String message) {
        super(message);
    }
}
