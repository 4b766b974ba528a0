package org.plumbrow.project.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How one item of a gate stands for a project.
 *
 * @param asked what is asked; of an answered item what was asked then
 * @param applies whether the project's data ask for it
 * @param blocks whether the gate stays shut without it
 * @param state how it stands
 * @param sentence the state in words: "Photo missing", "Waived: no shared boundary"
 * @param lacking the parts that are not there yet, those of a check by hand included
 * @param byHand computed, but no rule judges it (yet): checked by hand with document and signature
 * @param finding what its rule found; null without a rule
 * @param answer null while nobody has answered it
 * @param who who acts next: "Rosa, permits"
 * @param by until when, where somebody has promised it
 */
public record ItemView(
        AskedItem asked,
        Condition.Applies applies,
        boolean blocks,
        ItemState state,
        String sentence,
        List<AnswerKind> lacking,
        boolean byHand,
        @Nullable Finding finding,
        @Nullable AnswerView answer,
        String who,
        @Nullable LocalDate by) {

    /**
     * What is kept of an answer.
     *
     * @param reason why it was waived or does not apply; null for an answer
     * @param parts those that hold
     */
    public record AnswerView(
            long version,
            @Nullable String reason,
            @Nullable String standBy,
            @Nullable String waitsOn,
            @Nullable LocalDate promisedOn,
            List<AnswerPart> parts) {}

    public String code() {
        return asked.code();
    }

    /** 0 while nobody has answered it. */
    public long version() {
        return answer == null ? 0 : answer.version();
    }

    /** Whether the gate stays shut because of it. */
    public boolean isMissing() {
        return blocks && !state.isSatisfied();
    }

    /** "photo, reading in MΩ, safety". */
    public String kindWords() {
        String kinds = asked.kinds().stream().map(this::words).collect(Collectors.joining(", "));
        return kinds + (asked.safety() ? ", safety" : "");
    }

    private String words(AnswerKind kind) {
        boolean figure = kind == AnswerKind.READING
                && asked.readsFigures()
                && !asked.unit().isBlank();
        return figure ? kind.words() + " in " + asked.unit() : kind.words();
    }

    /** The parts that somebody gives by hand, in the order of the form. */
    public List<AnswerKind> givenKinds() {
        return Judging.givenKinds(asked, byHand);
    }
}
