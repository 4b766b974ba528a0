package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Refusal;

/** Why a wait cannot be written so. Pure. */
final class AwaitedRefusals {

    private AwaitedRefusals() {}

    static Optional<Refusal> of(Awaited typed, ProjectFacts project, LocalDate today) {
        return who(typed, project).or(() -> days(typed, today)).or(() -> result(typed));
    }

    private static Optional<Refusal> who(Awaited typed, ProjectFacts project) {
        return switch (typed.owedBy()) {
            case UTILITY ->
                when(
                        project.site().utilityId() == null,
                        "owedBy",
                        "The project’s site has no utility yet. Choose it on the page of the site first.");
            case PERMIT_OFFICE ->
                when(
                        project.site().permitOfficeId() == null,
                        "owedBy",
                        "The project’s site has no permit office yet. Choose it on the page of the site first.");
            case SUPPLIER, LOCATE_SERVICE -> when(typed.owedName().isEmpty(), "owedName", "Write who it is.");
            case CUSTOMER, US -> Optional.empty();
        };
    }

    private static Optional<Refusal> days(Awaited typed, LocalDate today) {
        LocalDate sent = typed.sentOn();
        LocalDate received = typed.receivedOn();
        if (received == null) {
            return when(ahead(sent, today), "sentOn", "Write a day up to today; leave it empty until it is asked for.");
        }
        if (sent == null) {
            return Optional.of(new Refusal("sentOn", "Write the day on which it was asked for: it came."));
        }
        return when(ahead(received, today), "receivedOn", "Write a day up to today; leave it empty until it comes.")
                .or(() -> when(
                        received.isBefore(sent),
                        "receivedOn",
                        "It came before it was asked for. Set one of the days right."));
    }

    private static boolean ahead(@Nullable LocalDate day, LocalDate today) {
        return day != null && day.isAfter(today);
    }

    private static Optional<Refusal> result(Awaited typed) {
        WaitResult result = typed.result();
        if (result == null) {
            return when(
                    typed.kind().needsResult() && !typed.isOpen(),
                    "result",
                    "Choose the result: an inspection or a locate that came has one.");
        }
        if (!result.fits(typed.kind())) {
            return Optional.of(new Refusal(
                    "result",
                    "Passed or correction is of an inspection, clear or not clear of a locate; nothing else has one."));
        }
        return when(typed.isOpen(), "receivedOn", "Write the day on which the result came.")
                .or(() -> when(
                        result == WaitResult.CLEAR && typed.expiresOn() == null,
                        "expiresOn",
                        "Write the last day on which the ticket counts; nobody digs after it."));
    }

    private static Optional<Refusal> when(boolean wrong, String field, String sentence) {
        return wrong ? Optional.of(new Refusal(field, sentence)) : Optional.empty();
    }
}
