package ${package};

import org.hidewright.testkit.BundleContract;

/** What the host expects of every bundle: sound declarations, texts, and answers that can be relied on. */
class ${className}ContractTest extends BundleContract {
    ${className}ContractTest() {
        super(${className}.class);
    }
}
