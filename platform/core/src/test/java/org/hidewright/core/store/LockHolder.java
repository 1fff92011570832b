package org.hidewright.core.store;

import java.nio.file.Path;

/** Takes the lock of a file, says so and holds it until it is killed. */
final class LockHolder {
    private LockHolder() {}

    public static void main(String[] file) throws Exception {
        try (SaveLock held = SaveLock.take(Path.of(file[0]))) {
            System.out.print(held.file().toString().equals(file[0]) ? "held" : "lost");
            System.out.flush();
            Thread.sleep(Long.MAX_VALUE);
        }
    }
}
