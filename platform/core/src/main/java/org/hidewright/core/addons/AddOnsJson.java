package org.hidewright.core.addons;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.core.json.JsonOut;

/** The bundles that can be turned on and off, as JSON. */
public final class AddOnsJson {
    private AddOnsJson() {}

    public static String write(List<AddOn> addOns) {
        return JsonOut.write(
                Map.of("addons", addOns.stream().<Object>map(AddOnsJson::one).toList()));
    }

    private static Map<String, Object> one(AddOn addOn) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", addOn.id());
        tree.put("name", addOn.name());
        tree.put("version", addOn.version());
        tree.put("origin", key(addOn.origin()));
        tree.put("state", key(addOn.state()));
        if (!addOn.why().isEmpty()) {
            tree.put("why", addOn.why());
        }
        tree.put("calculators", addOn.calculators());
        tree.put("tables", addOn.tables());
        if (!addOn.follows().isEmpty()) {
            tree.put("follows", addOn.follows());
        }
        tree.put("file", addOn.file().toString());
        return tree;
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
