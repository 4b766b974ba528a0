package org.plumbrow.estimate.place;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.estimate.place.Placement.Choice;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** Roof or ground, as typed. */
record DecisionForm(
        @Nullable String choice,
        @Nullable String decidedBy,
        @Nullable String decidedWith,
        @Nullable String decidedOn,
        @Nullable String reason,
        @Nullable String version) {

    static DecisionForm of(Placement placement) {
        return new DecisionForm(
                placement.isWritten() ? placement.choice().name() : "",
                placement.decidedBy(),
                placement.decidedWith(),
                placement.decidedOn() == null ? "" : placement.decidedOn().toString(),
                placement.reason(),
                String.valueOf(placement.version()));
    }

    /** Nothing is written yet: the people are proposed, the day is today. */
    static DecisionForm proposed(String by, String with, String today) {
        return new DecisionForm("", by, with, today, "", "-1");
    }

    Placement read(Entered entered) {
        Choice chosen = entered.choice("choice", Choice.class, choice).orElse(null);
        if (chosen == null && !entered.errors().hasFieldErrors("choice")) {
            entered.refuse("choice", "Choose where the array goes, or that it is not decided yet.");
        }
        String what = chosen == Choice.NOT_YET ? "what is still open" : "the reason";
        return new Placement(
                Entered.version(version),
                chosen == null ? Choice.NOT_YET : chosen,
                entered.within("decidedBy", "who decided", decidedBy, ProjectLimits.LONGEST_NAME),
                entered.within("decidedWith", "with whom", decidedWith, ProjectLimits.LONGEST_NAME),
                entered.date("decidedOn", "the day", decidedOn),
                entered.given("reason", what, reason, ProjectLimits.LONGEST_TEXT));
    }

    List<Written> written() {
        String words = Arrays.stream(Choice.values())
                .filter(one -> one.name().equals(Entered.text(choice)))
                .map(Choice::words)
                .findFirst()
                .orElse("");
        return List.of(
                Written.of("Decided for", "choice", choice, words),
                Written.of("Decided by", "decidedBy", decidedBy),
                Written.of("At the customer’s side", "decidedWith", decidedWith),
                Written.of("Day", "decidedOn", decidedOn),
                Written.of("Reason", "reason", reason));
    }
}
