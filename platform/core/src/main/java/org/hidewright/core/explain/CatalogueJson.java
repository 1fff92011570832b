package org.hidewright.core.explain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Texts;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.Wording;

/** All calculators installed, as JSON: id, version, title and purpose of each, and the bundle that brings it. */
public final class CatalogueJson {
    private CatalogueJson() {}

    public static String write(Catalogue catalogue, Wording wording) {
        List<Object> calculators = catalogue.ids().stream()
                .flatMap(id -> catalogue.find(id).stream())
                .<Object>map(installed -> one(installed, wording))
                .toList();
        return JsonOut.write(Map.of("calculators", calculators));
    }

    private static Map<String, Object> one(Installed installed, Wording wording) {
        Declaration declaration = installed.calculator().declaration();
        Texts texts = installed.calculator().texts();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", declaration.id());
        tree.put("version", declaration.version());
        tree.put("title", wording.text(texts, declaration.titleKey()));
        tree.put("purpose", wording.text(texts, declaration.purposeKey()));
        tree.put("bundle", installed.bundle());
        return tree;
    }
}
