package org.plumbrow.schedule.crewweek;

import org.plumbrow.web.Words;
import org.springframework.stereotype.Component;

/** What is said to the second of two who tick, or take back, the same step of day one. */
@Component
class DayOneSayings {

    private final Words words;

    DayOneSayings(Words words) {
        this.words = words;
    }

    String againstTick(DayOneStep step, DayOne.Answer answer) {
        DayOne.Tick stands = answer.stands().orElseThrow();
        return "%s: %s had ticked it, %s. That tick stands; nothing was changed."
                .formatted(step.words(), stands.by(), words.moment(stands.when().at()));
    }

    String againstTakingBack(DayOneStep step, DayOne.Answer answer) {
        return answer.stands()
                .map(stands -> "%s: not taken back, as %s has ticked it since, %s."
                        .formatted(
                                step.words(),
                                stands.by(),
                                words.moment(stands.when().at())))
                .orElse(step.words() + ": it is open already.");
    }
}
