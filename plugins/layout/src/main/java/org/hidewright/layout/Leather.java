package org.hidewright.layout;

/** What leather a part takes, from the least on. */
public enum Leather {
    /** Any that is there. */
    ANY,
    /** Sound leather; what is seen on its grain does no harm. */
    SOUND,
    /** Sound leather without a mark that is seen. */
    FAULTLESS
}
