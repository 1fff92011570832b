package org.hidewright.core.begin;

import java.util.List;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;

/** What a project can be begun with. */
public final class Templates {
    private Templates() {}

    /** Whether it answers an item, and what it asks can be answered one by one. */
    public static boolean isTemplate(Installed installed) {
        Declaration declaration = installed.calculator().declaration();
        return declaration.answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM)
                && declaration.questions().stream()
                        .noneMatch(question -> question.kind() == Kind.ROWS || question.kind() == Kind.ITEM);
    }

    /** All that are installed, in the order of their ids. */
    public static List<Installed> in(Catalogue catalogue) {
        return catalogue.ids().stream()
                .flatMap(id -> catalogue.find(id).stream())
                .filter(Templates::isTemplate)
                .toList();
    }
}
