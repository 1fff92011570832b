package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import org.junit.jupiter.api.Test;

/** Where the maker’s own lies. The rules are those of the XDG Base Directory Specification 0.8, freedesktop.org. */
class SettingsFolderTest {

    private static String told(String... arguments) {
        return SettingsFolder.of(arguments).folder().getPath();
    }

    private static String usual() {
        return SettingsFolder.ofUser(
                        System.getenv("XDG_CONFIG_HOME"), System.getenv("APPDATA"), System.getProperty("user.home"))
                .getPath();
    }

    @Test
    void theOptionNamesItAnywhereAmongTheArguments() {
        assertEquals("/s", told("explain", "--settings", "/s"));
        assertEquals("/s", told("--settings=/s", "explain"));
        assertEquals("/last", told("--settings=/s", "--settings", "/last"));
        assertEquals(new File("mine").getAbsolutePath(), told("--settings", "mine"));
    }

    @Test
    void withoutTheOptionItIsTheUsers() {
        assertEquals(usual(), told());
        assertEquals(usual(), told("--settings"));
        assertEquals(usual(), told("--settings="));
        assertEquals(usual(), told("work", "--", "--settings", "/s"));
    }

    @Test
    void theFolderOfTheSystemComesBeforeThoseOfHabit() {
        assertEquals(
                "/xdg/hidewright",
                SettingsFolder.ofUser("/xdg", "C:/data", "/home/u").getPath());
        assertEquals(
                "C:/data/Hidewright",
                SettingsFolder.ofUser(null, "C:/data", "/home/u").getPath());
        assertEquals(
                "/home/u/.config/hidewright",
                SettingsFolder.ofUser(null, null, "/home/u").getPath());
        assertEquals(
                "/home/u/.config/hidewright",
                SettingsFolder.ofUser("", "", "/home/u").getPath());
    }

    /** “All paths set in these environment variables must be absolute … consider the path invalid and ignore it.” */
    @Test
    void aFolderThatIsNotAbsoluteIsIgnored() {
        assertEquals(
                "/home/u/.config/hidewright",
                SettingsFolder.ofUser("xdg", null, "/home/u").getPath());
    }
}
