package org.hidewright.core.wording;

/** Something a sentence tells of that is called otherwise in each language. */
public interface InWords {
    String in(Wording wording);
}
