package org.plumbrow.permit;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** What is waited for, as typed. */
record AwaitedForm(
        @Nullable String kind,
        @Nullable String about,
        @Nullable String owedBy,
        @Nullable String owedName,
        @Nullable String sentOn,
        @Nullable String promisedOn,
        @Nullable String dueOn,
        @Nullable String expiresOn,
        @Nullable String receivedOn,
        @Nullable String result,
        @Nullable String paperId,
        @Nullable String note,
        @Nullable String version) {

    static final AwaitedForm EMPTY = new AwaitedForm("", "", "", "", "", "", "", "", "", "", "", "", "-1");

    static AwaitedForm of(Awaited one) {
        return new AwaitedForm(
                one.kind().name(),
                one.about(),
                one.owedBy().name(),
                one.owedName(),
                text(one.sentOn()),
                text(one.promisedOn()),
                text(one.dueOn()),
                text(one.expiresOn()),
                text(one.receivedOn()),
                text(one.result()),
                text(one.paperId()),
                one.note(),
                String.valueOf(one.version()));
    }

    /** The same asked once more: a correction put right, a ticket that ends. */
    static AwaitedForm again(Awaited one) {
        return new AwaitedForm(
                one.kind().name(),
                one.about(),
                one.owedBy().name(),
                one.owedName(),
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "-1");
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    /** @return with the kind “permit” and “us” where nothing was chosen, which is refused */
    Awaited read(Entered entered, UUID id, UUID projectId) {
        AwaitedKind chosen = entered.choice("kind", AwaitedKind.class, kind).orElse(null);
        if (chosen == null && !entered.errors().hasFieldErrors("kind")) {
            entered.refuse("kind", "Choose what is waited for.");
        }
        OwedBy who = entered.choice("owedBy", OwedBy.class, owedBy).orElse(null);
        if (who == null && !entered.errors().hasFieldErrors("owedBy")) {
            entered.refuse("owedBy", "Choose who owes it.");
        }
        return new Awaited(
                id,
                Entered.version(version),
                projectId,
                chosen == null ? AwaitedKind.PERMIT : chosen,
                "",
                entered.within("about", "what it is about", about, ProjectLimits.LONGEST_NAME),
                who == null ? OwedBy.US : who,
                null,
                null,
                entered.within("owedName", "the name", owedName, ProjectLimits.LONGEST_NAME),
                entered.date("sentOn", "the day on which it was asked for", sentOn),
                entered.date("promisedOn", "the promised day", promisedOn),
                entered.date("dueOn", "the day by which it is needed", dueOn),
                entered.date("expiresOn", "the last day on which it counts", expiresOn),
                entered.date("receivedOn", "the day on which it came", receivedOn),
                entered.choice("result", WaitResult.class, result).orElse(null),
                paper(entered),
                entered.within("note", "the note", note, ProjectLimits.LONGEST_TEXT));
    }

    private @Nullable UUID paper(Entered entered) {
        String chosen = Entered.text(paperId);
        try {
            return chosen.isEmpty() ? null : UUID.fromString(chosen);
        } catch (IllegalArgumentException strange) {
            entered.refuse("paperId", "Choose one of the project’s papers.");
            return null;
        }
    }

    List<Written> written() {
        return List.of(
                Written.of("What", "kind", kind),
                Written.of("About", "about", about),
                Written.of("Owed by", "owedBy", owedBy),
                Written.of("Name", "owedName", owedName),
                Written.of("Asked for", "sentOn", sentOn),
                Written.of("Promised for", "promisedOn", promisedOn),
                Written.of("Needed by", "dueOn", dueOn),
                Written.of("Counts until", "expiresOn", expiresOn),
                Written.of("Came", "receivedOn", receivedOn),
                Written.of("Result", "result", result),
                Written.of("Paper", "paperId", paperId),
                Written.of("Note", "note", note));
    }
}
