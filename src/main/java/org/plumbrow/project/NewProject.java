package org.plumbrow.project;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;

/**
 * What is known of a project when it begins. Only the name must be.
 *
 * @param reference the id it has elsewhere, once per branch: bringing the same file again makes no double
 * @param customer name of the customer; may be empty
 */
public record NewProject(
        String name,
        @Nullable String reference,
        String customer,
        List<NewContact> contacts,
        ProjectFacts.Site site,
        ProjectFacts.Contract contract,
        @Nullable NewPromise promise,
        Map<Duty, ProjectFacts.InCharge> people) {

    /** Somebody at the customer's side; fields as in {@link ProjectContact}. */
    public record NewContact(String name, String part, String phone, String email, String language, boolean decides) {}

    /** A promise to add; fields as in {@link ProjectFacts.Promise}. */
    public record NewPromise(
            Milestone milestone, LocalDate date, int toleranceDays, String promisedBy, String reason) {}

    /** A site of which nothing is known yet. */
    public static ProjectFacts.Site unknownSite() {
        return new ProjectFacts.Site(
                null,
                null,
                null,
                null,
                null,
                null,
                java.util.Set.of(),
                false,
                false,
                false,
                (UUID) null,
                null,
                List.of());
    }
}
