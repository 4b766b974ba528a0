package org.plumbrow.schedule.pace;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.duration.LearnedPace;

/**
 * The page of learned paces.
 *
 * @param tableDays crew-days of evidence that the table stands for
 */
record PaceView(List<Row> rows, double tableDays) {

    /** One row of the rates. @param crews those that worked by it, each with what it started from */
    record Row(String words, LearnedPace all, List<OfCrew> crews, List<Work> works) {}

    record OfCrew(String name, LearnedPace pace) {}

    /**
     * Finished work.
     *
     * @param took crew-days
     * @param planned crew-days by the table
     */
    record Work(
            UUID projectId,
            String project,
            String activityKey,
            String activity,
            String crew,
            double quantity,
            double took,
            double planned,
            LocalDate on,
            boolean fromReports) {}

    public double crewDays() {
        return rows.stream().mapToDouble(row -> row.all.crewDays()).sum();
    }
}
