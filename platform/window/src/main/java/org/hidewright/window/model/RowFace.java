package org.hidewright.window.model;

import java.util.List;
import org.hidewright.core.project.AnswerPath;

/**
 * A row of a table that is asked for.
 *
 * @param path where it stands
 * @param id by which links name it
 * @param cells what its questions hold, to be read in one line
 * @param variant what can be chosen for it, where a row is one of several kinds; else empty
 * @param questions what is asked of it
 */
public record RowFace(
        AnswerPath path, String id, List<String> cells, List<QuestionFace> variant, List<QuestionFace> questions) {}
