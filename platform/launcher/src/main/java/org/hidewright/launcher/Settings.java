package org.hidewright.launcher;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.osgi.framework.Constants;

/** What Felix and the component runtime are told, and why. */
final class Settings {

    private final Map<String, Object> settings = new HashMap<>();

    Settings(LineUp lineUp) {
        List<BundleFile> bundles = lineUp.files();
        int last = bundles.isEmpty() ? 1 : bundles.get(bundles.size() - 1).level();
        settings.put(Constants.FRAMEWORK_BEGINNING_STARTLEVEL, String.valueOf(last));
        settings.put("felix.log.level", "0"); // the launcher says what failed, in a sentence
        settings.put("felix.resolver.parallelism", "1"); // a pool of threads costs more than so few bundles gain
        settings.put("felix.bootdelegation.implicit", "false"); // a bundle sees what it imports, and no more
        settings.put("ds.cache.metadata", "true"); // component descriptions are not read again either
        settings.put("ds.log.enabled", "false");
        settings.put("ds.commands.enabled", "false"); // for a shell that is not here
        settings.put("hidewright.home", lineUp.home().folder().toString());
        settings.put("hidewright.settings", lineUp.settings().folder().toString());
    }

    Settings cache(CacheFolder cache, boolean current) {
        settings.put(Constants.FRAMEWORK_STORAGE, cache.felix().toString());
        settings.put(
                Constants.FRAMEWORK_STORAGE_CLEAN, current ? "none" : Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
        settings.put("felix.cache.locking", "false"); // the cache folder has its own lock
        return this;
    }

    /**
     * What the system bundle offers.
     *
     * @param whole whether the exports are all of them, so that Felix need not look at the modules of the JDK; otherwise
     *     they come on top of the JDK’s
     */
    Settings exports(SystemExports exports, boolean whole) {
        settings.put(
                whole ? Constants.FRAMEWORK_SYSTEMPACKAGES : Constants.FRAMEWORK_SYSTEMPACKAGES_EXTRA,
                exports.packages());
        settings.put(
                whole ? Constants.FRAMEWORK_SYSTEMCAPABILITIES : Constants.FRAMEWORK_SYSTEMCAPABILITIES_EXTRA,
                exports.capabilities());
        settings.put("felix.systembundle.activators", exports.activators());
        return this;
    }

    /** The activators are objects, so the map is one of texts by name only; Felix reads it as a map of anything. */
    @SuppressWarnings({"unchecked", "rawtypes"})
    Map<String, String> asMap() {
        return (Map) settings;
    }
}
