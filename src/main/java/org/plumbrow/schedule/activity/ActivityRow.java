package org.plumbrow.schedule.activity;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.project.Stage;

/**
 * An activity of a project as it is stored.
 *
 * @param key lasting name within the project: {@code racking-2}
 * @param days low, typical, high with the crew the rates are meant for; of a wait counted as {@code counting} says
 * @param people the rates are meant for; 0 for a wait
 * @param equipment what it needs, in words; may be empty
 * @param doneWithStage the stage that says it is done, where nobody recorded it
 * @param recordedBy who recorded it last; empty if nobody did
 */
public record ActivityRow(
        UUID id,
        long version,
        UUID projectId,
        String key,
        ActivityCode code,
        int position,
        String words,
        Spread days,
        Optional<Counting> counting,
        int people,
        String equipment,
        boolean dropped,
        Recorded recorded,
        Optional<Stage> doneWithStage,
        Optional<By> recordedBy,
        Optional<Pin> pin,
        Optional<By> pinnedBy) {

    /** Whose days a wait counts. */
    public enum Counting {
        BRANCH("working days"),
        UTILITY("working days of the utility"),
        CALENDAR("calendar days");

        private final String words;

        Counting(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Who, and when. */
    public record By(String name, Instant at) {}

    public boolean isWait() {
        return code.kind() == ActivityCode.Kind.WAIT;
    }

    public boolean isDone() {
        return recorded.finished().isPresent();
    }

    public boolean isUnderWay() {
        return recorded.started().isPresent() && !isDone();
    }

    /** Whether it has its row already; one of a project that is only being thought about has none. */
    public boolean isStored() {
        return version >= 0;
    }

    /** As it would be with that start settled: for a look at what it would do. */
    public ActivityRow fixedAs(Pin wanted) {
        return new ActivityRow(
                id,
                version,
                projectId,
                key,
                code,
                position,
                words,
                days,
                counting,
                people,
                equipment,
                dropped,
                recorded,
                doneWithStage,
                recordedBy,
                Optional.of(wanted),
                pinnedBy);
    }

    /** "Modules, array 2": the words with a capital, as the head of a row. */
    public String title() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
