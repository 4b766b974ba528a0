package org.plumbrow.schedule.crewweek;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.QrCode;

/** A crew's week. @param places names of the projects, in the order of the days */
record WeekView(CrewFacts crew, LocalDate monday, List<Day> days, Optional<Instant> publishedAt, List<String> places) {

    /** @param off why nobody works that day: a holiday, an absence */
    record Day(LocalDate date, boolean isToday, List<Visit> visits, Optional<String> off) {}

    /**
     * A place on one day.
     *
     * @param when all day, morning, afternoon
     * @param call whom to call there; empty without a contact
     */
    record Visit(
            String when,
            String work,
            String href,
            Field field,
            ProjectFacts project,
            List<String> machines,
            Optional<String> call) {}

    /**
     * What the crew writes down there.
     *
     * @param report address of the day's report; empty for a day ahead
     * @param reported whether it is written
     * @param dayLog of the cutover day; empty for other work
     */
    record Field(Optional<String> report, boolean reported, Optional<DayLog> dayLog) {}

    /**
     * The log of a cutover day.
     *
     * @param onPaper the whole address
     * @param square the same, as a phone reads it from a printed sheet
     */
    record DayLog(String href, String onPaper, QrCode square) {}

    /** "Crew 1: Sedge Hollow Dairy, then Hatch Ridge", "Crew 1: nothing booked this week". */
    public String heading() {
        if (places.isEmpty()) {
            return crew.name() + ": nothing booked this week";
        }
        return crew.name() + ": " + String.join(", then ", places);
    }

    public LocalDate sunday() {
        return monday.plusDays(6);
    }

    public LocalDate earlier() {
        return monday.minusWeeks(1);
    }

    public LocalDate later() {
        return monday.plusWeeks(1);
    }
}
