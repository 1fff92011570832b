package org.hidewright.api.measure;

/** How much a seeded test does: a part in every run, all of it with {@code -Dhidewright.long=true}. */
final class LongRun {
    private LongRun() {}

    static int times(int always, int whenLong) {
        return Boolean.getBoolean("hidewright.long") ? whenLong : always;
    }
}
