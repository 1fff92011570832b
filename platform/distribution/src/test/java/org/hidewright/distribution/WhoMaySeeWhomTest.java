package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule shown at work: it lets good manifests pass and stops planted bad ones. */
class WhoMaySeeWhomTest {

    @ParameterizedTest(name = "{0} may see {1}")
    @CsvSource({
        "org.hidewright.thickness,      org.hidewright.api.measure",
        "org.hidewright.thickness,      org.apache.commons.lang3",
        "org.hidewright.thickness,      org.hidewright.thickness.internal",
        "com.example.belts,             org.hidewright.api.calculator",
        "org.hidewright.core,           org.hidewright.api.measure",
        "org.hidewright.command,        org.hidewright.core.work",
        "org.hidewright.documents,      org.hidewright.core.jobcard",
        "org.hidewright.window,         org.eclipse.swt.widgets",
        "org.hidewright.command,        org.osgi.framework",
        "org.hidewright.api.contract,   java.util"
    })
    void keepsTheRule(String bundle, String seen) {
        assertEquals(List.of(), WhoMaySeeWhom.breaches(manifest(bundle, "Import-Package", seen)));
    }

    @ParameterizedTest(name = "{0} must not see {1}")
    @CsvSource({
        "org.hidewright.thickness,      org.hidewright.core.work",
        "org.hidewright.thickness,      org.hidewright.straps",
        "org.hidewright.costing,        org.hidewright.thickness",
        "com.example.belts,             org.hidewright.command",
        "org.hidewright.core,           org.hidewright.command",
        "org.hidewright.core,           org.osgi.framework",
        "org.hidewright.core,           org.osgi.service.component",
        "org.hidewright.core,           org.hidewright.thickness",
        "org.hidewright.documents,      org.hidewright.command",
        "org.hidewright.documents,      org.eclipse.swt.graphics",
        "org.hidewright.thickness,      org.eclipse.swt",
        "org.hidewright.command,        org.osgi.framework.launch",
        "org.hidewright.api.contract,   org.apache.commons.lang3",
        "org.hidewright.api.contract,   org.hidewright.core.work",
        "com.example.belts,             *"
    })
    void breaksTheRule(String bundle, String seen) {
        assertEquals(
                List.of(bundle + " must not see " + seen),
                WhoMaySeeWhom.breaches(manifest(bundle, "Import-Package", seen)));
    }

    @Test
    void aForbiddenPackageIsFoundBehindAttributesWithCommas() {
        Manifest manifest = manifest(
                "com.example.belts;singleton:=true",
                "Import-Package",
                "org.hidewright.api.measure;version=\"[1.0,2)\",org.hidewright.core.work;version=\"[1.0,2)\"");
        assertEquals(
                List.of("com.example.belts must not see org.hidewright.core.work"), WhoMaySeeWhom.breaches(manifest));
    }

    @Test
    void twoPackagesInOneClauseAreBothSeen() {
        Manifest manifest =
                manifest("com.example.belts", "Import-Package", "java.util;org.hidewright.core;version=\"1\"");
        assertEquals(List.of("com.example.belts must not see org.hidewright.core"), WhoMaySeeWhom.breaches(manifest));
    }

    @Test
    void dynamicImportsAndWholeBundlesAreNoWayRound() {
        assertEquals(
                List.of("com.example.belts must not see org.hidewright.core"),
                WhoMaySeeWhom.breaches(manifest("com.example.belts", "DynamicImport-Package", "org.hidewright.core")));
        assertEquals(
                List.of("com.example.belts must not require org.hidewright.core whole"),
                WhoMaySeeWhom.breaches(manifest("com.example.belts", "Require-Bundle", "org.hidewright.core")));
    }

    private static Manifest manifest(String bundle, String header, String value) {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("Bundle-SymbolicName", bundle);
        manifest.getMainAttributes().putValue(header, value);
        return manifest;
    }
}
