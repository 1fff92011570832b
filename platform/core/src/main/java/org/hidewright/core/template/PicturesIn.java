package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.Place;
import org.hidewright.core.picture.Picture;
import org.hidewright.core.picture.PictureReader;
import org.hidewright.core.picture.QuestionPicture;
import org.hidewright.core.wording.Remark;

/** The pictures in the text of a template, and whether those that its questions name are among them. */
final class PicturesIn {
    static final String KEY = "pictures";

    private final Map<String, Optional<Picture>> read = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    /**
     * Reads them.
     *
     * @param text the whole text
     * @param remarks gets what is wrong
     */
    PicturesIn(JsonText text, JsonObject head, Shapes shapes, List<Remark> remarks) {
        if (head.get(KEY).isPresent()) {
            shapes.object(head, KEY, "{\"belt\": {\"shapes\": []}}").ifPresent(object -> {
                for (Map.Entry<String, Member> member : object.members().entrySet()) {
                    JsonNode node = member.getValue().value();
                    PictureReader.Result result = PictureReader.read(node);
                    remarks.addAll(result.remarks());
                    read.put(member.getKey(), result.picture());
                    texts.put(member.getKey(), text.textOf(node));
                }
            });
        }
    }

    /** Tells of a question whose picture, or the part of it, is not there. */
    void check(Question question, Place place, BiConsumer<Notice, Place> told) {
        QuestionPicture.of(question).ifPresent(picture -> {
            Optional<Picture> found = read.getOrDefault(picture.name(), Optional.empty());
            boolean missing = !read.containsKey(picture.name());
            boolean partless = found.isPresent()
                    && !picture.part().isEmpty()
                    && !found.get().has(picture.part());
            if (missing || partless) {
                Notice notice = TemplateNotices.TEMPLATE_DECLARATION.with("the picture \""
                        + question.picture().orElseThrow() + "\" of the question " + question.key()
                        + " is not among the pictures of this template");
                told.accept(notice, place);
            }
        });
    }

    Map<String, String> texts() {
        return texts;
    }
}
