package org.hidewright.addons;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.felix.utils.resource.CapabilityImpl;
import org.apache.felix.utils.resource.RequirementImpl;
import org.apache.felix.utils.resource.ResourceBuilder;
import org.apache.felix.utils.resource.ResourceImpl;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;
import org.osgi.framework.BundleException;
import org.osgi.framework.Version;
import org.osgi.framework.namespace.HostNamespace;
import org.osgi.framework.namespace.IdentityNamespace;
import org.osgi.resource.Capability;
import org.osgi.resource.Namespace;
import org.osgi.resource.Requirement;
import org.osgi.resource.Resource;

/**
 * A bundle as an index lists it (OSGi Compendium, Repository Service): a resource with what it offers and needs, the content it
 * should have, and a few words for who browses.
 *
 * @param resource what is resolved
 * @param id its symbolic name
 * @param version its version, whole
 * @param url where its jar lies, from where the index does
 * @param size of its jar, in bytes
 * @param sha256 of its jar, in small letters
 */
record Listed(Resource resource, String id, Version version, String url, long size, String sha256) {
    /** OSGi Compendium 8, section 132.8: the content of a resource. */
    private static final String CONTENT = "osgi.content";

    private static final String SIZE = "size";
    private static final String URL = "url";
    private static final String MIME = "application/vnd.osgi.bundle";

    /** What a bundle brings to a bench: ours, since no standard knows of it. */
    private static final String BRINGS = "hidewright.brings";

    /** A calculator that a bundle brings, and that the texts of another can draw with or ask: ours too. */
    static final String CALCULATOR = "hidewright.calculator";

    private static final String NAME = "name";
    private static final String MAKER = "maker";
    private static final String CALCULATORS = "calculators";
    private static final String TABLES = "tables";

    /**
     * Lists a bundle.
     *
     * @param url where its jar lies, from where the index does
     * @throws FileTrouble if its manifest contradicts itself
     */
    static Listed of(Candidate candidate, String url) throws FileTrouble {
        ResourceImpl resource = new ResourceImpl();
        Resource read = read(candidate);
        for (Capability offered : read.getCapabilities(null)) {
            if (!offered.getNamespace().equals(CONTENT)) {
                resource.addCapability(new CapabilityImpl(resource, offered));
            }
        }
        for (Requirement needed : read.getRequirements(null)) {
            resource.addRequirement(
                    new RequirementImpl(resource, needed.getNamespace(), directives(needed), needed.getAttributes()));
        }
        calculators(candidate.described(), resource);
        Map<String, Object> content = new LinkedHashMap<>();
        String sha256 = Sha256.of(candidate.jar());
        content.put(CONTENT, sha256);
        content.put(URL, url);
        content.put(SIZE, (long) candidate.jar().length);
        content.put("mime", MIME);
        resource.addCapability(new CapabilityImpl(resource, CONTENT, Map.of(), content));
        resource.addCapability(brings(candidate.described(), resource));
        return new Listed(resource, candidate.id(), version(resource), url, candidate.jar().length, sha256);
    }

    /** One fragment may become a part of several hosts (OSGi Core 8, section 3.3); the library does not say so. */
    private static Map<String, String> directives(Requirement needed) {
        Map<String, String> directives = new LinkedHashMap<>(needed.getDirectives());
        if (needed.getNamespace().equals(HostNamespace.HOST_NAMESPACE)) {
            directives.put(Namespace.REQUIREMENT_CARDINALITY_DIRECTIVE, Namespace.CARDINALITY_MULTIPLE);
        }
        return directives;
    }

    /** No manifest tells of calculators that a text draws with or asks, nor of those that others can ask. */
    private static void calculators(Described described, ResourceImpl resource) {
        for (String id : described.components().calculators()) {
            resource.addCapability(new CapabilityImpl(resource, CALCULATOR, Map.of(), Map.of(CALCULATOR, id)));
        }
        for (String id : described.asks()) {
            resource.addRequirement(new RequirementImpl(resource, CALCULATOR, "(" + CALCULATOR + "=" + id + ")"));
        }
    }

    /** The calculator that is needed; empty where something else is. */
    static Optional<String> calculator(Requirement need) {
        return need.getNamespace().equals(CALCULATOR)
                ? Optional.of(need.getDirectives()
                        .getOrDefault(Namespace.REQUIREMENT_FILTER_DIRECTIVE, "")
                        .replaceAll("^\\(" + CALCULATOR + "=|\\)$", ""))
                : Optional.empty();
    }

    /** Ids of calculators that its texts draw with or ask. */
    List<String> asks() {
        return resource.getRequirements(CALCULATOR).stream()
                .flatMap(need -> calculator(need).stream())
                .toList();
    }

    private static Capability brings(Described described, Resource resource) {
        Map<String, Object> attributes = new LinkedHashMap<>();
        attributes.put(NAME, inOneLine(described.name()));
        attributes.put(MAKER, inOneLine(described.maker()));
        attributes.put(CALCULATORS, described.components().calculators());
        attributes.put(TABLES, described.components().tables());
        attributes.values().removeIf(value -> value instanceof List<?> list && list.isEmpty());
        return new CapabilityImpl(resource, BRINGS, Map.of(), attributes);
    }

    /** An index can hold no characters that steer a screen. */
    private static String inOneLine(String words) {
        return words.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    private static Resource read(Candidate candidate) throws FileTrouble {
        try {
            return ResourceBuilder.build("", candidate.described().headers(), false);
        } catch (BundleException | IllegalArgumentException contradictsItself) {
            throw Trouble.of(AddOnNotices.ADD_ON_BAD_MANIFEST.with(
                    candidate.from().toString(), String.valueOf(contradictsItself.getMessage())));
        }
    }

    /** What an index says of a resource; empty where it is no bundle, or its jar and what that should be are not told. */
    static Optional<Listed> of(Resource resource) {
        List<Capability> identities = resource.getCapabilities(IdentityNamespace.IDENTITY_NAMESPACE);
        if (identities.isEmpty()
                || !IdentityNamespace.TYPE_BUNDLE.equals(of(resource, IdentityNamespace.CAPABILITY_TYPE_ATTRIBUTE))
                        && !IdentityNamespace.TYPE_FRAGMENT.equals(
                                of(resource, IdentityNamespace.CAPABILITY_TYPE_ATTRIBUTE))) {
            return Optional.empty();
        }
        return resource.getCapabilities(CONTENT).stream()
                .map(Capability::getAttributes)
                .filter(content -> content.get(CONTENT) instanceof String && content.get(SIZE) instanceof Long)
                .findFirst()
                .map(content -> new Listed(
                        resource,
                        String.valueOf(of(resource, IdentityNamespace.IDENTITY_NAMESPACE)),
                        version(resource),
                        String.valueOf(content.get(URL)),
                        (Long) content.get(SIZE),
                        content.get(CONTENT).toString().toLowerCase(Locale.ROOT)));
    }

    private static Object of(Resource resource, String attribute) {
        return resource.getCapabilities(IdentityNamespace.IDENTITY_NAMESPACE)
                .get(0)
                .getAttributes()
                .get(attribute);
    }

    private static Version version(Resource resource) {
        return of(resource, IdentityNamespace.CAPABILITY_VERSION_ATTRIBUTE) instanceof Version version
                ? version
                : Version.emptyVersion;
    }

    /** What its author calls it. */
    String name() {
        return brings().get(NAME) instanceof String name ? name : id;
    }

    /** Who made it; empty where that is not told. */
    String maker() {
        return brings().get(MAKER) instanceof String maker ? maker : "";
    }

    List<String> calculators() {
        return texts(CALCULATORS);
    }

    List<String> tables() {
        return texts(TABLES);
    }

    private List<String> texts(String key) {
        return brings().get(key) instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of();
    }

    private Map<String, Object> brings() {
        return resource.getCapabilities(BRINGS).stream()
                .findFirst()
                .map(Capability::getAttributes)
                .orElse(Map.of());
    }
}
