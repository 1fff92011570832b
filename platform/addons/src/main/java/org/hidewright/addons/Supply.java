package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;
import org.osgi.framework.Constants;
import org.osgi.framework.namespace.BundleNamespace;
import org.osgi.framework.namespace.HostNamespace;
import org.osgi.framework.namespace.PackageNamespace;
import org.osgi.resource.Requirement;

/**
 * One trip to the shelves: what is wanted from some indexes, with what it needs, fetched and held against what the indexes say it
 * should be.
 */
final class Supply {
    private final Shop shop;
    private final Needs needs;
    private final Map<String, Shop.Installed> installed;
    private final Set<String> program;
    /** By id, the newest first. */
    private final Map<String, List<Listed>> offered = new TreeMap<>();

    private final Set<String> sameAsHere = new TreeSet<>();
    private final Map<Listed, IndexFile> sources = new LinkedHashMap<>();
    private final List<Path> from;
    /** What is taken of each that was asked for, what is taken first before what is taken rather not. */
    private final Map<String, List<Listed>> asked = new LinkedHashMap<>();

    private Supply(List<Path> from, Shop shop, Needs needs) {
        this.from = from;
        this.shop = shop;
        this.needs = needs;
        this.installed = shop.installed();
        this.program = shop.program().keySet();
    }

    /** @throws FileTrouble if one of the indexes cannot be read */
    static Supply of(List<Path> from, Shop shop, Needs needs) throws FileTrouble {
        Supply supply = new Supply(from, shop, needs);
        for (Path place : from) {
            IndexFile file = IndexFile.in(place);
            for (Listed listed : file.read(shop.sound())) {
                if (supply.isHere(listed)) {
                    supply.sameAsHere.add(listed.id());
                } else if (!supply.program.contains(listed.id())) {
                    supply.sources.putIfAbsent(listed, file);
                    supply.offered
                            .computeIfAbsent(listed.id(), id -> new ArrayList<>())
                            .add(listed);
                }
            }
        }
        supply.offered
                .values()
                .forEach(versions ->
                        versions.sort(Comparator.comparing(Listed::version).reversed()));
        return supply;
    }

    private boolean isHere(Listed listed) {
        Shop.Installed here = installed.get(listed.id());
        return here != null && here.listed().sha256().equals(listed.sha256());
    }

    private Optional<Listed> here(String id) {
        return Optional.ofNullable(installed.get(id)).map(Shop.Installed::listed);
    }

    /** All of one name, what is installed among it; the newest first. */
    private List<Listed> known(String id) {
        List<Listed> known = new ArrayList<>(offered.getOrDefault(id, List.of()));
        here(id).ifPresent(known::add);
        known.sort(Comparator.comparing(Listed::version).reversed());
        return known;
    }

    /**
     * Wants a bundle.
     *
     * @param version the very one; empty for the newest
     * @param older whether what is newer gives way to it
     */
    void want(String id, String version, boolean older) throws FileTrouble {
        List<Listed> there = offers(id);
        List<Listed> meant = there.stream()
                .filter(listed -> version.isEmpty() || isCalled(version, listed))
                .toList();
        if (meant.isEmpty()) {
            throw Trouble.of(
                    AddOnNotices.ADD_ON_INDEX_NO_VERSION.with(id, from.get(0).toString(), version, versions(there)));
        }
        Optional<Listed> here = here(id);
        List<Listed> fit = meant.stream()
                .filter(listed -> older
                        || here.isEmpty()
                        || listed.version().compareTo(here.get().version()) >= 0)
                .toList();
        if (fit.isEmpty()) {
            throw Trouble.of(AddOnNotices.ADD_ON_INDEX_OLDER.with(
                    id,
                    here.orElseThrow().version().toString(),
                    meant.get(0).version().toString()));
        }
        asked.put(id, fit);
    }

    /** A bundle’s whole name, of which the last part will do where only one bundle ends so. */
    String whole(String name) {
        Set<String> all = names();
        all.addAll(program);
        List<String> ending = all.stream().filter(id -> id.endsWith("." + name)).toList();
        return !all.contains(name) && ending.size() == 1 ? ending.get(0) : name;
    }

    /** What an index offers under a name, the newest first; what is here already stands for the same in an index. */
    private List<Listed> offers(String id) throws FileTrouble {
        if (program.contains(id)) {
            throw Trouble.of(AddOnNotices.ADD_ON_OF_PROGRAM.with(from.get(0).toString(), id));
        }
        List<Listed> offers = new ArrayList<>(known(id));
        if (!sameAsHere.contains(id)) {
            here(id).ifPresent(offers::remove);
        }
        if (offers.isEmpty()) {
            String place = from.get(0).toString();
            throw Trouble.of(Nearest.to(id, offered.keySet())
                    .map(near -> AddOnNotices.ADD_ON_INDEX_UNKNOWN_NEAREST.with(id, place, near))
                    .orElseGet(() ->
                            AddOnNotices.ADD_ON_INDEX_UNKNOWN.with(id, place, String.join(", ", offered.keySet()))));
        }
        return offers;
    }

    /** With the qualifier or without. */
    private static boolean isCalled(String version, Listed listed) {
        String whole = listed.version().toString();
        return whole.equals(version) || whole.startsWith(version + ".");
    }

    private static String versions(List<Listed> listed) {
        return String.join(
                ", ",
                listed.stream().map(one -> one.version().toString()).distinct().toList());
    }

    /** The versions there are of a name, here or offered; empty where there are none. */
    String versions(String id) {
        return versions(known(id));
    }

    /** Names of all that is here or offered. */
    Set<String> names() {
        Set<String> names = new TreeSet<>(offered.keySet());
        names.addAll(installed.keySet());
        return names;
    }

    /** Wants what is installed as new as it can be had. */
    void renew(String id) throws FileTrouble {
        if (!installed.containsKey(id)) {
            offers(id);
            throw Trouble.of(
                    AddOnNotices.ADD_ON_INDEX_NOT_INSTALLED.with(id, from.get(0).toString()));
        }
        asked.put(id, notOlder(id));
    }

    void renewAll() {
        installed.keySet().forEach(id -> asked.put(id, notOlder(id)));
    }

    private List<Listed> notOlder(String id) {
        Listed here = here(id).orElseThrow();
        return known(id).stream()
                .filter(listed -> listed == here || listed.version().compareTo(here.version()) > 0)
                .toList();
    }

    /**
     * Wants a bundle in one of several versions, also an older one; what is here first.
     *
     * @return whether there is any
     */
    boolean want(String id, Predicate<Listed> versions) {
        List<Listed> fit = known(id).stream()
                .filter(versions)
                .sorted(Comparator.comparing(
                        listed -> here(id).filter(listed::equals).isEmpty()))
                .toList();
        if (!fit.isEmpty()) {
            asked.put(id, fit);
        }
        return !fit.isEmpty();
    }

    /** Makes the change, with everything that runs still running after it. */
    AddOnChange make() throws FileTrouble {
        Set<String> wanted = new LinkedHashSet<>(asked.keySet());
        installed.values().stream()
                .filter(Shop.Installed::runs)
                .filter(this::isMet)
                .forEach(one -> wanted.add(one.addOn().id()));
        Map<String, Listed> chosen = chosen(wanted);
        Map<String, Boolean> turned = new TreeMap<>();
        for (String id : chosen.keySet()) {
            if (!asked.containsKey(id) && installed.containsKey(id) && isOff(id)) {
                turned.put(id, true); // or what needs it would not start
            }
        }
        Set<String> off = shop.off();
        shop.programNeeded(chosen.values(), Set.of()).stream()
                .filter(off::contains)
                .forEach(id -> turned.put(id, true));
        return shop.make(coming(chosen), turned, Set.of(), false);
    }

    private boolean isOff(String id) {
        return installed.get(id).addOn().state() == State.OFF;
    }

    /** What does not work as it is keeps nothing from being installed. */
    private boolean isMet(Shop.Installed one) {
        Map<String, List<Listed>> asItIs = new TreeMap<>();
        installed.forEach((id, here) -> asItIs.put(id, List.of(here.listed())));
        try {
            return needs.of(List.of(one.addOn().id()), asItIs, shop.programCalculators())
                    .containsKey(one.addOn().id());
        } catch (Needs.Unmet broken) {
            return false;
        }
    }

    /** Ids to what is taken of each: what was asked for, and what that needs. */
    Map<String, Listed> chosen(Set<String> wanted) throws FileTrouble {
        Map<String, List<Listed>> pool = new TreeMap<>();
        installed.forEach((id, here) -> {
            List<Listed> rather = new ArrayList<>(notOlder(id));
            rather.remove(here.listed());
            rather.add(0, here.listed()); // nothing is renewed unasked, unless somebody needs it
            pool.put(id, rather);
        });
        offered.forEach(pool::putIfAbsent);
        pool.putAll(asked);
        try {
            return needs.of(wanted, pool, shop.programCalculators());
        } catch (Needs.Unmet unmet) {
            throw Trouble.of(unmet.need()
                    .map(need -> AddOnNotices.ADD_ON_INDEX_NEEDS.with(names(wanted), name(unmet, pool), words(need)))
                    .orElseGet(() -> AddOnNotices.ADD_ON_INDEX_CLASH.with(names(wanted))));
        }
    }

    private String names(Set<String> wanted) {
        return String.join(", ", asked.isEmpty() ? wanted : asked.keySet());
    }

    private static String name(Needs.Unmet unmet, Map<String, List<Listed>> pool) {
        return pool.values().stream()
                .flatMap(List::stream)
                .filter(listed -> listed.resource().equals(unmet.resource()))
                .map(listed -> listed.id() + " " + listed.version())
                .findFirst()
                .orElse("");
    }

    /** As a manifest has it: a name, and the versions that would do. */
    private static Phrase words(Requirement need) {
        String filter = need.getDirectives().getOrDefault(Constants.FILTER_DIRECTIVE, "");
        Matcher named = Pattern.compile("\\(" + Pattern.quote(need.getNamespace()) + "=([^)]*)\\)")
                .matcher(filter);
        String name = named.find() ? named.group(1) : filter;
        String floor = first("(?<!!)\\((?:bundle-)?version>=([^)]*)\\)", filter);
        String ceiling = first("\\(!\\((?:bundle-)?version>=([^)]*)\\)\\)", filter);
        String versions = ceiling.isEmpty() ? floor : "[" + floor + "," + ceiling + ")";
        String whole = versions.isEmpty() ? name : name + " " + versions;
        return switch (need.getNamespace()) {
            case PackageNamespace.PACKAGE_NAMESPACE -> Phrase.of("needs-package", whole);
            case BundleNamespace.BUNDLE_NAMESPACE, HostNamespace.HOST_NAMESPACE -> Phrase.of("needs-bundle", whole);
            case Listed.CALCULATOR -> Phrase.of("needs-calculator", name);
            default -> Phrase.of("needs-other", need.getNamespace(), filter);
        };
    }

    private static String first(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        return matcher.find() ? matcher.group(1) : "";
    }

    /** What of it is not here yet, fetched and looked over. */
    List<Shop.Coming> coming(Map<String, Listed> chosen) throws FileTrouble {
        List<Shop.Coming> coming = new ArrayList<>();
        for (Listed listed : chosen.values()) {
            IndexFile source = sources.get(listed);
            if (source != null) {
                coming.add(new Shop.Coming(fetched(listed, source), !asked.containsKey(listed.id())));
            }
        }
        return coming;
    }

    private Candidate fetched(Listed listed, IndexFile source) throws FileTrouble {
        Path jar = Shop.below(source.folder(), listed.url())
                .orElseThrow(() -> Trouble.of(AddOnNotices.ADD_ON_INDEX_LEADS_OUT.with(listed.id(), listed.url())));
        mustBe(listed, jar, bytes(listed, jar));
        Candidate candidate = Candidate.ofJar(jar, shop.sound());
        mustBe(listed, jar, candidate.jar());
        if (!candidate.id().equals(listed.id())
                || !Listed.of(candidate, listed.url()).version().equals(listed.version())) {
            throw Trouble.of(AddOnNotices.ADD_ON_INDEX_DIFFERS.with(
                    jar.toString(),
                    Phrase.of(
                            "index-name",
                            candidate.id(),
                            Listed.of(candidate, listed.url()).version().toString())));
        }
        Soundness.mustBeNone(jar, shop.sound().host(candidate.described()));
        return candidate;
    }

    private static byte[] bytes(Listed listed, Path jar) throws FileTrouble {
        try {
            if (!Files.isRegularFile(jar)) {
                throw Trouble.of(AddOnNotices.ADD_ON_INDEX_JAR_MISSING.with(listed.id(), jar.toString()));
            }
            if (Files.size(jar) != listed.size()) {
                throw Trouble.of(AddOnNotices.ADD_ON_INDEX_DIFFERS.with(
                        jar.toString(), Phrase.of("index-size", Files.size(jar), listed.size())));
            }
            return Files.readAllBytes(jar);
        } catch (IOException e) {
            throw Trouble.notRead(jar, e);
        }
    }

    private static void mustBe(Listed listed, Path jar, byte[] bytes) throws FileTrouble {
        if (!Sha256.of(bytes).equals(listed.sha256())) {
            throw Trouble.of(AddOnNotices.ADD_ON_INDEX_DIFFERS.with(jar.toString(), Phrase.of("index-checksum")));
        }
    }
}
