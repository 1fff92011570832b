package org.hidewright.launcher;

import java.io.File;

/**
 * The folder of the maker’s own: the add-ons installed, in {@code addons}, in {@code addons.txt} which are turned off, and what
 * else of them is kept. It need not be there. Found here and nowhere else; the platform is told it by the property
 * {@code hidewright.settings}.
 */
final class SettingsFolder {

    static final String OPTION = "--settings";

    private final File folder;

    private SettingsFolder(File folder) {
        this.folder = folder;
    }

    /** The folder that the arguments name, else the one of the user on this system. */
    static SettingsFolder of(String[] arguments) {
        String told = named(arguments);
        return new SettingsFolder(
                told != null
                        ? new File(told).getAbsoluteFile()
                        : ofUser(
                                System.getenv("XDG_CONFIG_HOME"),
                                System.getenv("APPDATA"),
                                System.getProperty("user.home")));
    }

    /**
     * By the XDG Base Directory Specification (freedesktop.org), which has a folder that is not absolute ignored; on
     * Windows where programs keep what a user sets.
     */
    static File ofUser(String xdg, String appData, String home) {
        if (xdg != null && new File(xdg).isAbsolute()) {
            return new File(xdg, "hidewright");
        }
        return appData != null && !appData.isEmpty()
                ? new File(appData, "Hidewright")
                : new File(home, ".config/hidewright");
    }

    private static String named(String[] arguments) {
        String named = null;
        for (int i = 0; i < arguments.length && !arguments[i].equals("--"); i++) {
            if (arguments[i].equals(OPTION) && i + 1 < arguments.length) {
                named = arguments[i + 1];
            } else if (arguments[i].startsWith(OPTION + "=")) {
                named = arguments[i].substring(OPTION.length() + 1);
            }
        }
        return named == null || named.isEmpty() ? null : named;
    }

    File folder() {
        return folder;
    }

    File addOns() {
        return new File(folder, "addons");
    }

    File choices() {
        return new File(folder, "addons.txt");
    }

    /** Whose signature add-ons have to carry. */
    File trust() {
        return new File(folder, "addons-trust.txt");
    }

    /** Which add-ons the maker was told of before their first start. */
    File agreed() {
        return new File(folder, "addons-agreed.txt");
    }
}
