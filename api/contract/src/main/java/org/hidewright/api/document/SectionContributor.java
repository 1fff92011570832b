package org.hidewright.api.document;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Adds sections to the job card. Register it as a service; the sections follow the platform's own, in the order of the
 * contributors' names.
 */
@ConsumerType
public interface SectionContributor {
    /**
     * The sections for a job, in {@link JobView#language() its language}; an empty list where there is nothing to say.
     * May be called on any thread. An exception is reported in place of the sections and spoils nothing else.
     */
    List<Section> sections(JobView job);
}
