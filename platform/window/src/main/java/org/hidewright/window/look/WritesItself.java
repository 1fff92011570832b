package org.hidewright.window.look;

import java.util.List;

/** A control that writes its own text, rather than have the system do it: it can say whether there was room for all of it. */
public interface WritesItself {
    /** What had no room where it was written last; empty where all of it had. */
    List<String> cut();
}
