package org.hidewright.core.find;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Wording;

/** What is installed, as it can be found: templates, calculators and what they ask. Looks all of them up, which loads them. */
public final class InstalledThings {
    private final Wording wording;
    private final List<Findable> things = new ArrayList<>();

    private InstalledThings(Wording wording) {
        this.wording = wording;
    }

    public static List<Findable> of(Catalogue catalogue, Wording wording) {
        InstalledThings all = new InstalledThings(wording);
        catalogue.ids().forEach(id -> catalogue.find(id).ifPresent(all::add));
        return List.copyOf(all.things);
    }

    private void add(Installed installed) {
        Declaration declaration = installed.calculator().declaration();
        Texts texts = installed.calculator().texts();
        String title = wording.text(texts, declaration.titleKey());
        things.add(new Findable(
                makes(declaration) ? Group.TEMPLATE : Group.CALCULATOR,
                title,
                "",
                wording.text(texts, declaration.purposeKey()),
                Goal.calculator(installed.id(), "")));
        for (Question question : declaration.questions()) {
            question(question, title, texts, Goal.calculator(installed.id(), question.key()));
        }
    }

    private static boolean makes(Declaration declaration) {
        return declaration.answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM);
    }

    /**
     * A question and those inside it.
     *
     * @param where what it stands in
     * @param goal the question that stands by itself, which holds the others
     */
    private void question(Question question, String where, Texts texts, Goal goal) {
        String label = wording.text(texts, question.labelKey());
        things.add(new Findable(Group.QUESTION, label, where, wording.text(texts, question.helpKey()), goal));
        Stream.concat(
                        question.questions().stream(),
                        question.variants().stream().flatMap(variant -> variant.questions().stream()))
                .forEach(inside -> question(inside, where + ", " + label, texts, goal));
    }
}
