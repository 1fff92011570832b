package org.hidewright.core.addons;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** Why bundles cannot be installed, removed, or turned on and off. */
public final class AddOnNotices {
    public static final NoticeKind ADD_ON_NOT_THERE = NoticeKind.stop("add-on-not-there");
    public static final NoticeKind ADD_ON_NOT_READ = NoticeKind.stop("add-on-not-read");
    public static final NoticeKind ADD_ON_NO_JAR = NoticeKind.stop("add-on-no-jar");
    public static final NoticeKind ADD_ON_NO_BUNDLE = NoticeKind.stop("add-on-no-bundle");
    public static final NoticeKind ADD_ON_BAD_NAME = NoticeKind.stop("add-on-bad-name");
    public static final NoticeKind ADD_ON_BAD_VERSION = NoticeKind.stop("add-on-bad-version");
    public static final NoticeKind ADD_ON_UNSOUND = NoticeKind.stop("add-on-unsound");
    public static final NoticeKind ADD_ON_FOLLOWS = NoticeKind.stop("add-on-follows");
    public static final NoticeKind ADD_ON_EMPTY_FOLDER = NoticeKind.stop("add-on-empty-folder");
    public static final NoticeKind ADD_ON_TWICE = NoticeKind.stop("add-on-twice");
    public static final NoticeKind ADD_ON_OF_PROGRAM = NoticeKind.stop("add-on-of-program");
    public static final NoticeKind ADD_ON_INSTALLED = NoticeKind.stop("add-on-installed");
    public static final NoticeKind ADD_ON_UNKNOWN = NoticeKind.stop("add-on-unknown");
    public static final NoticeKind ADD_ON_UNKNOWN_NEAREST = NoticeKind.stop("add-on-unknown-nearest");
    public static final NoticeKind ADD_ON_NONE = NoticeKind.stop("add-on-none");
    public static final NoticeKind ADD_ON_CAME_WITH = NoticeKind.stop("add-on-came-with");
    public static final NoticeKind ADD_ON_OF_PLATFORM = NoticeKind.stop("add-on-of-platform");
    public static final NoticeKind ADD_ON_NAMELESS = NoticeKind.stop("add-on-nameless");
    public static final NoticeKind ADD_ON_NOT_CHANGED = NoticeKind.stop("add-on-not-changed");
    public static final NoticeKind ADD_ON_BAD_MANIFEST = NoticeKind.stop("add-on-bad-manifest");
    public static final NoticeKind ADD_ON_NO_FOLDER = NoticeKind.stop("add-on-no-folder");
    public static final NoticeKind ADD_ON_INDEX_TWICE = NoticeKind.stop("add-on-index-twice");
    public static final NoticeKind ADD_ON_INDEX_NOT_THERE = NoticeKind.stop("add-on-index-not-there");
    public static final NoticeKind ADD_ON_INDEX_UNREADABLE = NoticeKind.stop("add-on-index-unreadable");
    public static final NoticeKind ADD_ON_INDEX_LONG = NoticeKind.stop("add-on-index-long");
    public static final NoticeKind ADD_ON_INDEX_UNKNOWN = NoticeKind.stop("add-on-index-unknown");
    public static final NoticeKind ADD_ON_INDEX_UNKNOWN_NEAREST = NoticeKind.stop("add-on-index-unknown-nearest");
    public static final NoticeKind ADD_ON_INDEX_NOT_INSTALLED = NoticeKind.stop("add-on-index-not-installed");
    public static final NoticeKind ADD_ON_INDEX_OLDER = NoticeKind.stop("add-on-index-older");
    public static final NoticeKind ADD_ON_INDEX_NEEDS = NoticeKind.stop("add-on-index-needs");
    public static final NoticeKind ADD_ON_INDEX_CLASH = NoticeKind.stop("add-on-index-clash");
    public static final NoticeKind ADD_ON_INDEX_LEADS_OUT = NoticeKind.stop("add-on-index-leads-out");
    public static final NoticeKind ADD_ON_INDEX_JAR_MISSING = NoticeKind.stop("add-on-index-jar-missing");
    public static final NoticeKind ADD_ON_INDEX_DIFFERS = NoticeKind.stop("add-on-index-differs");
    public static final NoticeKind ADD_ON_INDEX_NO_VERSION = NoticeKind.stop("add-on-index-no-version");
    public static final NoticeKind ADD_ON_BACK_NOTHING = NoticeKind.stop("add-on-back-nothing");
    public static final NoticeKind ADD_ON_PROFILE_KEY = NoticeKind.stop("add-on-profile-key");
    public static final NoticeKind ADD_ON_PROFILE_MISSING = NoticeKind.stop("add-on-profile-missing");
    public static final NoticeKind ADD_ON_PROFILE_FORMAT = NoticeKind.stop("add-on-profile-format");
    public static final NoticeKind ADD_ON_PROFILE_NEWER = NoticeKind.stop("add-on-profile-newer");
    public static final NoticeKind ADD_ON_PROFILE_UNKNOWN = NoticeKind.stop("add-on-profile-unknown");
    public static final NoticeKind ADD_ON_PROFILE_UNKNOWN_NEAREST = NoticeKind.stop("add-on-profile-unknown-nearest");
    public static final NoticeKind ADD_ON_PROFILE_NO_VERSION = NoticeKind.stop("add-on-profile-no-version");
    public static final NoticeKind ADD_ON_PROFILE_VERSION = NoticeKind.stop("add-on-profile-version");
    public static final NoticeKind ADD_ON_PROFILE_BAD_RANGE = NoticeKind.stop("add-on-profile-bad-range");
    public static final NoticeKind ADD_ON_PROFILE_TWICE = NoticeKind.stop("add-on-profile-twice");
    public static final NoticeKind ADD_ON_PROFILE_THERE = NoticeKind.stop("add-on-profile-there");
    public static final NoticeKind ADD_ON_NOT_CERTIFICATE = NoticeKind.stop("add-on-not-certificate");
    public static final NoticeKind ADD_ON_MAKER_UNKNOWN = NoticeKind.stop("add-on-maker-unknown");
    public static final NoticeKind ADD_ON_MAKER_SEVERAL = NoticeKind.stop("add-on-maker-several");

    public static final NoticeKind ADD_ON_TEXTS_WAIT = NoticeKind.check("add-on-texts-wait");
    public static final NoticeKind ADD_ON_WAITS = NoticeKind.check("add-on-waits");
    public static final NoticeKind ADD_ON_UNTRUSTED = NoticeKind.stop("add-on-untrusted");
    public static final NoticeKind ADD_ON_NEEDED = NoticeKind.check("add-on-needed");
    public static final NoticeKind ADD_ON_NOT_STARTED = NoticeKind.check("add-on-not-started");
    public static final NoticeKind ADD_ON_NOT_STOPPED = NoticeKind.check("add-on-not-stopped");

    private AddOnNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                ADD_ON_NOT_THERE,
                ADD_ON_NOT_READ,
                ADD_ON_NO_JAR,
                ADD_ON_NO_BUNDLE,
                ADD_ON_BAD_NAME,
                ADD_ON_BAD_VERSION,
                ADD_ON_UNSOUND,
                ADD_ON_FOLLOWS,
                ADD_ON_EMPTY_FOLDER,
                ADD_ON_TWICE,
                ADD_ON_OF_PROGRAM,
                ADD_ON_INSTALLED,
                ADD_ON_UNKNOWN,
                ADD_ON_UNKNOWN_NEAREST,
                ADD_ON_NONE,
                ADD_ON_CAME_WITH,
                ADD_ON_OF_PLATFORM,
                ADD_ON_NAMELESS,
                ADD_ON_NOT_CHANGED,
                ADD_ON_BAD_MANIFEST,
                ADD_ON_NO_FOLDER,
                ADD_ON_INDEX_TWICE,
                ADD_ON_INDEX_NOT_THERE,
                ADD_ON_INDEX_UNREADABLE,
                ADD_ON_INDEX_LONG,
                ADD_ON_INDEX_UNKNOWN,
                ADD_ON_INDEX_UNKNOWN_NEAREST,
                ADD_ON_INDEX_NOT_INSTALLED,
                ADD_ON_INDEX_OLDER,
                ADD_ON_INDEX_NEEDS,
                ADD_ON_INDEX_CLASH,
                ADD_ON_INDEX_LEADS_OUT,
                ADD_ON_INDEX_JAR_MISSING,
                ADD_ON_INDEX_DIFFERS,
                ADD_ON_INDEX_NO_VERSION,
                ADD_ON_BACK_NOTHING,
                ADD_ON_PROFILE_KEY,
                ADD_ON_PROFILE_MISSING,
                ADD_ON_PROFILE_FORMAT,
                ADD_ON_PROFILE_NEWER,
                ADD_ON_PROFILE_UNKNOWN,
                ADD_ON_PROFILE_UNKNOWN_NEAREST,
                ADD_ON_PROFILE_NO_VERSION,
                ADD_ON_PROFILE_VERSION,
                ADD_ON_PROFILE_BAD_RANGE,
                ADD_ON_PROFILE_TWICE,
                ADD_ON_PROFILE_THERE,
                ADD_ON_NOT_CERTIFICATE,
                ADD_ON_MAKER_UNKNOWN,
                ADD_ON_MAKER_SEVERAL,
                ADD_ON_TEXTS_WAIT,
                ADD_ON_WAITS,
                ADD_ON_UNTRUSTED,
                ADD_ON_NEEDED,
                ADD_ON_NOT_STARTED,
                ADD_ON_NOT_STOPPED);
    }
}
