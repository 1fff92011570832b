package org.hidewright.core.begin;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;

/** Writes projects and slips that were not there before, in the words of a language. */
public final class NewSlips {
    private final Wording wording;

    public NewSlips(Wording wording) {
        this.wording = wording;
    }

    /** What a calculator is called. */
    public String title(Installed calculator) {
        return wording.text(
                calculator.calculator().texts(),
                calculator.calculator().declaration().titleKey());
    }

    /** A slip of a calculator, under its id and its title. */
    public Map<String, Object> slip(Installed calculator, Map<String, Object> answered) {
        Map<String, Object> slip = new LinkedHashMap<>();
        slip.put("id", calculator.id());
        slip.put("calculator", calculator.id());
        slip.put("from", calculator.bundle());
        slip.put("title", title(calculator));
        slip.put("questions", new LinkedHashMap<>(answered));
        return slip;
    }

    /** The text of a slip that is called by its calculator and has no answers yet. */
    public static String empty(String id, String calculator, String bundle) {
        Map<String, Object> slip = new LinkedHashMap<>();
        slip.put("id", id);
        slip.put("calculator", calculator);
        slip.put("from", bundle);
        slip.put("questions", Map.of());
        return JsonOut.write(slip);
    }

    /** The text of a project that is shown in these units; millimetres need not be said. */
    public static String text(String name, UnitSystem system, List<?> slips) {
        Map<String, Object> project = new LinkedHashMap<>();
        project.put("hidewright", ProjectReader.FORMAT);
        project.put("name", name);
        if (system != UnitSystem.METRIC) {
            project.put("show", Map.of("units", system.key()));
        }
        project.put("slips", slips);
        return JsonOut.write(project);
    }

    /** A project. */
    public static Project project(String name, UnitSystem system, List<?> slips) {
        String text = text(name, system, slips);
        return ProjectReader.read(text).project().orElseThrow(() -> new IllegalStateException(text));
    }
}
