package org.hidewright.addons;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.TextFile;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.VersionRange;

/**
 * Reads what a shop has turned on from a file. Every word of it has to be understood: half of a shop is set up for nobody. What is
 * not is told with its line, all of it at once.
 */
final class ProfileReader {
    static final String MARK = "hidewright-shop";
    static final String ABOUT = "about";
    static final String FROM = "from";
    static final String BUNDLES = "bundles";
    static final String BUNDLE = "bundle";
    static final String VERSIONS = "versions";
    static final int FORMAT = 1;

    private static final List<String> HEAD = List.of(MARK, ABOUT, FROM, BUNDLES);
    private static final List<String> OF_BUNDLE = List.of(BUNDLE, VERSIONS);
    private static final String A_BUNDLE = "{\"bundle\": \"org.example.nets\", \"versions\": \"[1.2,2)\"}";

    private final List<Remark> remarks = new ArrayList<>();

    private ProfileReader() {}

    /**
     * What a file says.
     *
     * @param from folders with indexes, as they are reached from here
     * @param bundles what is to be on
     */
    record Profile(List<Path> from, List<Wanted> bundles) {}

    /**
     * A bundle that is to be on.
     *
     * @param versions those that would do
     * @param as the versions are written; empty where any would do
     * @param place where it stands
     */
    record Wanted(String id, VersionRange versions, String as, Place place) {}

    static Profile read(Path file) throws FileTrouble {
        String text = TextFile.read(file).text();
        ProfileReader reader = new ProfileReader();
        try {
            Profile profile = reader.profile(JsonText.read(text), file);
            if (!reader.remarks.isEmpty()) {
                throw new FileTrouble(reader.remarks, null);
            }
            return profile;
        } catch (JsonTrouble e) {
            throw new FileTrouble(
                    List.of(Remark.of(JsonNotices.NOT_JSON.with(e.words()), CoreTexts.TEXTS)
                            .atPlace(e.place())),
                    e);
        }
    }

    private Profile profile(JsonText source, Path file) {
        if (!(source.root() instanceof JsonObject head) || !head.members().containsKey(MARK)) {
            say(
                    AddOnNotices.ADD_ON_PROFILE_FORMAT.with(file.toString(), FORMAT),
                    source.root().place());
            return new Profile(List.of(), List.of());
        }
        format(source.textOf(head.members().get(MARK).value()), file, head);
        known(head, HEAD);
        text(head, ABOUT, "\"…\"");
        List<Path> from = new ArrayList<>();
        Path beside = file.toAbsolutePath().getParent();
        for (JsonNode folder : list(head, FROM, "[\"…\"]")) {
            text(folder, FROM, "[\"…\"]")
                    .ifPresent(named -> from.add(beside.resolve(named).normalize()));
        }
        if (!head.members().containsKey(BUNDLES)) {
            missing(BUNDLES, "\"bundles\": [" + A_BUNDLE + "]", head);
        }
        List<Wanted> wanted = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (JsonNode bundle : list(head, BUNDLES, "[" + A_BUNDLE + "]")) {
            wanted(bundle, ids).ifPresent(wanted::add);
        }
        return new Profile(from, wanted);
    }

    private void format(String said, Path file, JsonObject head) {
        Place place = head.members().get(MARK).place();
        if (!said.matches("[1-9]\\d{0,5}")) {
            say(AddOnNotices.ADD_ON_PROFILE_FORMAT.with(file.toString(), FORMAT), place);
        } else if (Integer.parseInt(said) > FORMAT) {
            say(AddOnNotices.ADD_ON_PROFILE_NEWER.with(file.toString(), said, FORMAT), place);
        }
    }

    private Optional<Wanted> wanted(JsonNode node, Set<String> ids) {
        if (!(node instanceof JsonObject bundle)) {
            Optional<String> id = text(node, BUNDLES, "[" + A_BUNDLE + "]");
            return id.flatMap(named -> wanted(named, "", node.place(), ids));
        }
        known(bundle, OF_BUNDLE);
        Optional<String> id = text(bundle, BUNDLE, A_BUNDLE);
        Optional<String> versions = text(bundle, VERSIONS, A_BUNDLE);
        if (!bundle.members().containsKey(BUNDLE)) {
            missing(BUNDLE, A_BUNDLE, bundle);
        }
        return id.flatMap(named -> wanted(named, versions.orElse(""), bundle.place(), ids));
    }

    private Optional<Wanted> wanted(String id, String versions, Place place, Set<String> ids) {
        if (!ids.add(id)) {
            say(AddOnNotices.ADD_ON_PROFILE_TWICE.with(id), place);
        }
        try {
            return Optional.of(new Wanted(id, new VersionRange(versions.isEmpty() ? "0" : versions), versions, place));
        } catch (IllegalArgumentException noVersions) {
            say(AddOnNotices.ADD_ON_PROFILE_BAD_RANGE.with(versions), place);
            return Optional.empty();
        }
    }

    private void known(JsonObject node, List<String> keys) {
        node.members().forEach((key, member) -> {
            if (!keys.contains(key)) {
                say(AddOnNotices.ADD_ON_PROFILE_KEY.with(key, String.join(", ", keys)), member.place());
            }
        });
    }

    private List<JsonNode> list(JsonObject head, String key, String like) {
        JsonNode found = head.get(key).orElse(null);
        if (found instanceof JsonArray array) {
            return array.items();
        } else if (found != null) {
            shape(key, like, found);
        }
        return List.of();
    }

    private Optional<String> text(JsonObject in, String key, String like) {
        return in.get(key).flatMap(found -> text(found, key, like));
    }

    private Optional<String> text(JsonNode found, String key, String like) {
        if (found instanceof JsonScalar scalar
                && scalar.type() == JsonScalar.Type.TEXT
                && !scalar.text().isBlank()) {
            return Optional.of(scalar.text());
        }
        shape(key, like, found);
        return Optional.empty();
    }

    private void missing(String key, String like, JsonNode in) {
        say(AddOnNotices.ADD_ON_PROFILE_MISSING.with(key, like), in.place());
    }

    private void shape(String key, String like, JsonNode found) {
        say(JsonNotices.wrongShape(key, like, found), found.place());
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }
}
