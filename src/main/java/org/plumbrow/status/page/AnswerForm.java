package org.plumbrow.status.page;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.CustomerAnswers.Said;
import org.plumbrow.web.Refusal;

/**
 * Does the day of the outage work?
 *
 * @param day that the page showed
 * @param answer {@code works} or {@code not}: the button that was pressed
 */
record AnswerForm(
        @Nullable String day,
        @Nullable String answer,
        @Nullable String reason,
        @Nullable String name) {

    static final AnswerForm EMPTY = new AnswerForm(null, null, null, null);

    private static final String WORKS = "works";
    private static final String NOT = "not";

    Optional<LocalDate> answeredDay() {
        try {
            return Optional.of(LocalDate.parse(text(day)));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    Said said() {
        return new Said(WORKS.equals(answer), text(reason), text(name));
    }

    /** What has to be looked at before it counts; the sentences are the page's own. */
    List<Refusal> missing(CustomerWords words) {
        List<Refusal> missing = new ArrayList<>();
        if (!WORKS.equals(answer) && !NOT.equals(answer)) {
            missing.add(Refusal.ofForm(words.say("status.ask.choose")));
        }
        if (NOT.equals(answer) && text(reason).isBlank()) {
            missing.add(new Refusal("reason", words.say("status.ask.why")));
        }
        if (text(reason).strip().length() > CustomerAnswers.REASON_MOST) {
            missing.add(new Refusal("reason", words.say("status.ask.toolong", CustomerAnswers.REASON_MOST)));
        }
        if (text(name).strip().length() > CustomerAnswers.NAME_MOST) {
            missing.add(new Refusal("name", words.say("status.ask.toolong", CustomerAnswers.NAME_MOST)));
        }
        return missing;
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }
}
