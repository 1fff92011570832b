package org.hidewright.launcher;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What Felix and the component runtime are told, and why. */
final class Settings {

    private Settings() {}

    static Map<String, String> of(ProgramHome home, CacheFolder cache, boolean current, List<BundleFile> bundles)
            throws IOException {
        Map<String, String> settings = new HashMap<>();
        settings.put("org.osgi.framework.storage", cache.felix().toString());
        settings.put("org.osgi.framework.storage.clean", current ? "none" : "onFirstInit");
        settings.put("felix.cache.locking", "false"); // the cache folder has its own lock
        settings.put("felix.log.level", "0"); // the launcher says what failed, in a sentence
        settings.put("felix.resolver.parallelism", "1"); // a pool of threads costs more than so few bundles gain
        settings.put("felix.bootdelegation.implicit", "false"); // a bundle sees what it imports, and no more
        if (current) {
            settings.put("org.osgi.framework.system.packages", cache.systemPackages());
        }
        int last = bundles.isEmpty() ? 1 : bundles.get(bundles.size() - 1).level();
        settings.put("org.osgi.framework.startlevel.beginning", String.valueOf(last));
        settings.put("ds.cache.metadata", "true");
        settings.put("ds.log.enabled", "false");
        settings.put("ds.commands.enabled", "false");
        settings.put("hidewright.home", home.folder().toString());
        return settings;
    }
}
