package org.hidewright.core.proof;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.trials.DeclaredFault;
import org.hidewright.api.trials.Typical;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;

/** What a template says of itself: whether nothing is left out, blank, or contradicts itself. */
final class DeclaredProof {
    private static final List<String> OF_HEAD = List.of("title", "purpose", "item");
    private static final List<String> OF_FIELD = List.of("label", "help");
    private static final List<String> OF_TELL = List.of("what", "why", "next");

    private final Declaration declaration;
    private final TemplatePlaces places;
    private final List<Remark> remarks = new ArrayList<>();

    private DeclaredProof(Declaration declaration, TemplatePlaces places) {
        this.declaration = declaration;
        this.places = places;
    }

    /** @param typical reads presets and examples */
    static List<Remark> of(Declaration declaration, Typical typical, TemplatePlaces places, Surroundings beside) {
        DeclaredProof proof = new DeclaredProof(declaration, places);
        DeclaredFault.of(declaration, typical).forEach(proof::fault);
        declaration.questions().forEach(question -> proof.named(question, beside));
        proof.blank(places.itself(), OF_HEAD);
        for (String list : List.of("questions", "answers")) {
            places.all(list).forEach(field -> proof.field(field));
        }
        places.all("tells").forEach(proof::tell);
        return proof.remarks;
    }

    private void named(Question question, Surroundings beside) {
        beside.notThere(question).ifPresent(key -> {
            String named = (key.equals("from") ? question.from() : question.stock()).orElseThrow();
            say(
                    ProofNotices.PROOF_NO_SUCH_PLACE.with(question.key(), key, named),
                    places.of("questions", question.key()));
        });
    }

    private void fault(DeclaredFault fault) {
        Question question = fault.question();
        String key = question.key();
        String usual = question.usual().map(Object::toString).orElse("");
        Notice notice = switch (fault.what()) {
            case NO_EXAMPLE -> ProofNotices.PROOF_NO_EXAMPLE.with(key);
            case NO_LOWER_LIMIT -> ProofNotices.PROOF_NO_LIMITS.with(key, "min");
            case NO_UPPER_LIMIT -> ProofNotices.PROOF_NO_LIMITS.with(key, "max");
            case USUAL_OUTSIDE -> ProofNotices.PROOF_USUAL_OUTSIDE.with(key, usual);
            case PRESET_UNUSUAL ->
                ProofNotices.PROOF_PRESET_UNUSUAL.with(key, question.preset().orElseThrow(), usual);
        };
        say(notice, places.of("questions", key));
    }

    private void field(JsonObject field) {
        blank(field, OF_FIELD);
        if (field.get("options").orElse(null) instanceof JsonObject options) {
            blank(options, List.copyOf(options.members().keySet()));
        }
    }

    /** Places in a sentence are counted from nothing; more of them than are filled would be printed as they stand. */
    private void tell(JsonObject tell) {
        blank(tell, OF_TELL);
        int given = tell.get("with").orElse(null) instanceof JsonArray with
                ? with.items().size()
                : 0;
        for (String part : OF_TELL) {
            String text = tell.text(part).orElse("").replace("'", "''");
            int wanted = places(text);
            if (wanted > given) {
                say(
                        ProofNotices.PROOF_UNFILLED.with(part, wanted, given),
                        tell.members().get(part).place());
            }
        }
    }

    private static int places(String text) {
        try {
            return new MessageFormat(text, Locale.ROOT).getFormatsByArgumentIndex().length;
        } catch (IllegalArgumentException braces) {
            return Integer.MAX_VALUE; // one that is not closed is filled by nothing
        }
    }

    private void blank(JsonObject object, List<String> keys) {
        for (String key : keys) {
            TemplatePlaces.blank(object, key)
                    .ifPresent(place -> say(ProofNotices.PROOF_BLANK.with(key, declaration.id()), place));
        }
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }
}
