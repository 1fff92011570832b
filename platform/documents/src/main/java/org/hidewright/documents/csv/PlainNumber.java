package org.hidewright.documents.csv;

import java.util.regex.Pattern;

/** A number and nothing else, with point or comma: it may begin with a sign and is no formula. */
final class PlainNumber {
    private static final Pattern NUMBER = Pattern.compile("[-+\u2212]?[0-9]+([.,][0-9]+)?([eE][-+]?[0-9]+)?");

    private PlainNumber() {}

    static boolean is(String text) {
        return NUMBER.matcher(text).matches();
    }
}
