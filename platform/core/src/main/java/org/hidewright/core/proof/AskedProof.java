package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.wording.Remark;

/**
 * What a template asks other calculators, held against what they ask: a key that they do not know would be left out without a word,
 * and what it was to draw would be missing from the piece. It can be seen only where they are installed.
 */
final class AskedProof {
    private static final List<String> OF_GROUP = List.of("when");
    private static final List<String> OF_VARIANTS = List.of("when", "is");
    private static final List<String> OF_ROW = List.of("when", "each", "id");
    private static final List<String> OF_ROW_VARIANTS = List.of("when", "each", "id", "is");

    private final String calculator;
    private final List<Remark> remarks = new ArrayList<>();

    private AskedProof(String calculator) {
        this.calculator = calculator;
    }

    /** @param others finds the calculators that are asked */
    static List<Remark> of(TemplatePlaces places, Function<String, Optional<DeclaredCalculator>> others) {
        return places.asks().stream()
                .flatMap(asks -> others.apply(asks.calculator().text()).stream()
                        .flatMap(whom -> remarks(asks, whom.declaration().questions())))
                .toList();
    }

    private static Stream<Remark> remarks(TemplatePlaces.Asks asks, List<Question> questions) {
        AskedProof proof = new AskedProof(asks.calculator().text());
        proof.look(questions, asks.questions(), OF_GROUP);
        return proof.remarks.stream();
    }

    private void look(List<Question> questions, JsonObject asked, List<String> beside) {
        List<String> known = questions.stream().map(Question::key).toList();
        keys(known, asked, beside);
        for (Question question : questions) {
            asked.get(question.key()).ifPresent(node -> inside(question, node));
        }
    }

    private void inside(Question question, JsonNode node) {
        if (node instanceof JsonArray rows) {
            rows.items().stream()
                    .filter(JsonObject.class::isInstance)
                    .forEach(row -> answers(question, (JsonObject) row, OF_ROW, OF_ROW_VARIANTS));
        } else if (node instanceof JsonObject group) {
            answers(question, group, OF_GROUP, OF_VARIANTS);
        }
    }

    private void answers(Question question, JsonObject asked, List<String> beside, List<String> besideVariants) {
        if (question.variants().isEmpty()) {
            look(question.questions(), asked, beside);
            return;
        }
        keys(question.variants().stream().map(Variant::key).toList(), asked, besideVariants);
        for (Variant variant : question.variants()) {
            if (asked.get(variant.key()).orElse(null) instanceof JsonObject chosen) {
                look(variant.questions(), chosen, OF_GROUP);
            }
        }
    }

    private void keys(List<String> known, JsonObject asked, List<String> beside) {
        for (Map.Entry<String, Member> member : asked.members().entrySet()) {
            String key = member.getKey();
            if (!known.contains(key) && !beside.contains(key)) {
                remarks.add(Remark.of(
                                Nearest.to(key, known)
                                        .map(near -> ProofNotices.PROOF_NOT_ASKED_NEAREST.with(calculator, key, near))
                                        .orElseGet(() -> ProofNotices.PROOF_NOT_ASKED.with(
                                                calculator, key, String.join(", ", known))),
                                CoreTexts.TEXTS)
                        .atPlace(member.getValue().place()));
            }
        }
    }
}
