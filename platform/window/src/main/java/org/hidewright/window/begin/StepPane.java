package org.hidewright.window.begin;

import org.hidewright.window.model.ProjectFace;

/** What is asked in one step. */
interface StepPane {
    /** Shows how it stands now; whether it takes another height. */
    boolean show(ProjectFace face);
}
