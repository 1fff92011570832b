package org.hidewright.core.catalogue;

import java.util.List;
import java.util.function.Function;
import org.hidewright.api.document.JobView;

/**
 * What adds sections to the job card.
 *
 * @param bundle symbolic name of the bundle that brought it
 * @param sections asks it for the sections of a job. What comes is a copy or null, but whether these are
 *     sections, and not too many, has to be looked at. Throws a {@link BundleFault} where none can be had
 */
public record Contributor(String bundle, Function<JobView, List<?>> sections) {}
