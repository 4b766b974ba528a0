package org.plumbrow.schedule.tell;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.ToTell;

/**
 * Whom a plan concerns.
 *
 * @param before number of the plan it is compared with; 0 without one
 */
record TellView(PlanHead plan, int before, List<Line> lines) {

    /**
     * One of them.
     *
     * @param href the page about them
     * @param told "Ines, today 6:40 am, by a notice in the outbox"; empty while nobody has told them
     */
    record Line(ToTell who, String href, Optional<Told> told) {}

    /** @param how {@code NOTICE} or {@code SPOKEN} */
    record Told(String by, java.time.Instant at, String how) {}

    /** Those whom it concerns at all. */
    public List<ToTell.Whom> whoms() {
        return Arrays.stream(ToTell.Whom.values())
                .filter(whom -> !of(whom).isEmpty())
                .toList();
    }

    public List<Line> of(ToTell.Whom whom) {
        return lines.stream().filter(line -> line.who().whom() == whom).toList();
    }

    public long leftOf(ToTell.Whom whom) {
        return of(whom).stream().filter(line -> line.told().isEmpty()).count();
    }

    public long left() {
        return lines.stream().filter(line -> line.told().isEmpty()).count();
    }

    /** Those a notice can be written to from here. */
    public long leftForNotices() {
        return lines.stream()
                .filter(line -> line.told().isEmpty() && line.who().whom() != ToTell.Whom.UTILITY)
                .count();
    }
}
