package org.plumbrow.project.gate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Stage;

/** How an item stands, from what is asked, what was given and what a rule found. Pure. */
final class Judging {

    private Judging() {}

    /** How it stands, and the same in words. */
    record Verdict(ItemState state, String sentence, List<AnswerKind> lacking) {}

    /** The parts that somebody gives: a computed item that is checked by hand asks for a document and a signature. */
    static List<AnswerKind> givenKinds(AskedItem asked, boolean byHand) {
        Set<AnswerKind> kinds = EnumSet.noneOf(AnswerKind.class);
        kinds.addAll(asked.kinds());
        if (kinds.remove(AnswerKind.COMPUTED) && byHand) {
            kinds.add(AnswerKind.DOCUMENT);
            kinds.add(AnswerKind.SIGNATURE);
        }
        return List.copyOf(kinds);
    }

    /** Checked by hand: no rule judges it, or the rule cannot tell and a licensed person's paper may stand in. */
    static boolean isByHand(AskedItem asked, @Nullable Finding finding) {
        if (!asked.asks(AnswerKind.COMPUTED)) {
            return false;
        }
        // What decides on the day itself (animals, milk, reversal, voltage) no paper can replace.
        boolean ofTheDay = asked.safety() && asked.stage() == Stage.CUTOVER;
        return finding == null || (finding instanceof Finding.CannotTell && !ofTheDay);
    }

    static Verdict of(AskedItem asked, @Nullable Finding finding, AnswerRow answer) {
        return switch (answer.stand()) {
            case WAIVED -> new Verdict(ItemState.WAIVED, "Waived: " + answer.reason(), List.of());
            case NOT_APPLICABLE ->
                new Verdict(ItemState.NOT_APPLICABLE, "Does not apply: " + answer.reason(), List.of());
            case ASKED -> ofParts(asked, finding, answer);
        };
    }

    private static Verdict ofParts(AskedItem asked, @Nullable Finding finding, AnswerRow answer) {
        if (finding instanceof Finding.Broken broken) {
            return new Verdict(ItemState.BROKEN, broken.sentence() + " " + broken.remedy(), List.of());
        }
        boolean byHand = isByHand(asked, finding);
        List<AnswerKind> lacking = givenKinds(asked, byHand).stream()
                .filter(kind -> !holds(finding, kind) && answer.count(kind) < least(asked, kind))
                .toList();
        boolean blocks = byHand ? handPapersLack(lacking) : !isAnsweredByHand(asked);
        if (finding instanceof Finding.CannotTell unknown && blocks) {
            return new Verdict(ItemState.CANNOT_TELL, unknown.sentence() + " " + unknown.missing(), lacking);
        }
        List<AnswerPart> unexplained = unexplained(asked, answer);
        if (!unexplained.isEmpty()) {
            return new Verdict(ItemState.ASKED_ABOUT, askedAbout(asked, unexplained.get(0)), lacking);
        }
        return lacking.isEmpty()
                ? new Verdict(ItemState.DONE, done(finding, answer), List.of())
                : notYet(asked, lacking, answer);
    }

    /** Stands in the data of the room whose rule it is. */
    private static boolean holds(@Nullable Finding finding, AnswerKind kind) {
        return finding instanceof Finding.Recorded recorded && recorded.holds().contains(kind);
    }

    /** A room's own data are one way to answer what is not computed, a person's answer the other; not so on the day itself. */
    private static boolean isAnsweredByHand(AskedItem asked) {
        return !asked.asks(AnswerKind.COMPUTED) && asked.stage() != Stage.CUTOVER;
    }

    private static boolean handPapersLack(List<AnswerKind> lacking) {
        return lacking.contains(AnswerKind.DOCUMENT) || lacking.contains(AnswerKind.SIGNATURE);
    }

    private static Verdict notYet(AskedItem asked, List<AnswerKind> lacking, AnswerRow answer) {
        String waitsOn = answer.waitsOn();
        if (waitsOn != null) {
            return answer.promisedOn() == null
                    ? new Verdict(ItemState.WAITING, "Waiting on " + waitsOn, lacking)
                    : new Verdict(ItemState.PROMISED, "Promised by " + waitsOn, lacking);
        }
        if (answer.parts().isEmpty()) {
            return new Verdict(ItemState.OPEN, "Not started", lacking);
        }
        return new Verdict(ItemState.PARTLY, missing(asked, lacking, answer), lacking);
    }

    private static String missing(AskedItem asked, List<AnswerKind> lacking, AnswerRow answer) {
        String kinds = lacking.stream()
                .map(kind -> least(asked, kind) > 1
                        ? kind.words() + " (" + answer.count(kind) + " of " + least(asked, kind) + ")"
                        : kind.words())
                .collect(Collectors.joining(", "));
        return "Missing: " + kinds;
    }

    private static String done(@Nullable Finding finding, AnswerRow answer) {
        if (finding instanceof Finding.Satisfied || finding instanceof Finding.Recorded) {
            return finding.sentence();
        }
        boolean explained = answer.parts().stream()
                .anyMatch(part ->
                        part.kind() == AnswerKind.READING && !part.note().isEmpty());
        return explained ? "Done, explained" : "Done";
    }

    static int least(AskedItem asked, AnswerKind kind) {
        return kind == AnswerKind.READING || kind == AnswerKind.PHOTO ? asked.least() : 1;
    }

    private static List<AnswerPart> unexplained(AskedItem asked, AnswerRow answer) {
        List<AnswerPart> found = new ArrayList<>();
        for (AnswerPart part : answer.parts()) {
            if (part.kind() == AnswerKind.READING && part.note().isEmpty() && asked.isOutside(part.number())) {
                found.add(part);
            }
        }
        return found;
    }

    private static String askedAbout(AskedItem asked, AnswerPart part) {
        String of = part.label().isEmpty() ? "" : part.label() + ": ";
        String value = part.number() == null ? part.text() : AskedItem.plain(part.number()) + " " + asked.unit();
        return of + value + " is outside " + asked.limits() + ". Explain it";
    }
}
