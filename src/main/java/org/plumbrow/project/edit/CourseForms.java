package org.plumbrow.project.edit;

import org.jspecify.annotations.Nullable;

/** The small forms of a project's course, as typed. */
final class CourseForms {

    private CourseForms() {}

    record NameForm(@Nullable String name, @Nullable String version) {}

    record StandingForm(
            @Nullable String to,
            @Nullable String reason,
            @Nullable String until,
            @Nullable String version) {}

    record WeightForm(
            @Nullable String weight,
            @Nullable String weightReason,
            @Nullable String version) {}

    record PromiseForm(
            @Nullable String milestone,
            @Nullable String date,
            @Nullable String toleranceDays,
            @Nullable String promisedBy,
            @Nullable String reason) {}
}
