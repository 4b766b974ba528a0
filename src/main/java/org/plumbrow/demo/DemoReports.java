package org.plumbrow.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.schedule.crewweek.DailyReports;
import org.plumbrow.schedule.crewweek.SaidOfTheDay;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What the crew leads reported of the sites that are built: the branch's own pace is learned from it. */
@Component
@WithDemo
class DemoReports {

    private static final LocalTime AFTER_WORK = LocalTime.of(16, 50);

    private final DailyReports reports;
    private final Access access;

    DemoReports(DailyReports reports, Access access) {
        this.reports = reports;
        this.access = access;
    }

    void tell(List<Told> projects, Cast cast, Story story) {
        Map<String, UUID> ids = new HashMap<>();
        projects.forEach(told -> ids.put(told.key(), told.id()));
        SeedRow.of("reports.csv").forEach(row -> tell(row, ids.get(row.text("project")), cast, story));
    }

    private void tell(SeedRow row, UUID project, Cast cast, Story story) {
        LocalDate day = workingDay(story.daysAgo(row.whole("first_days_ago")), row.whole("day"));
        StoryClock.at(
                story.at(day, AFTER_WORK),
                () -> access.as(cast.manager(), () -> {
                    reports.reportUnchecked(
                            cast.crews().get(row.text("crew")), project, day, said(row), cast.actor(row.text("lead")));
                    return day;
                }));
    }

    private static SaidOfTheDay said(SeedRow row) {
        Map<String, Double> quantity = new HashMap<>();
        Map<String, Double> hours = new HashMap<>();
        for (String line : row.parts("said", ";")) {
            String[] words = line.split(" ");
            quantity.put(words[0], words[1].equals("rest") ? Double.NaN : Double.parseDouble(words[1]));
            hours.put(words[0], Double.parseDouble(words[2]));
        }
        return new SaidOfTheDay(
                row.whole("people"),
                row.figure("hours").doubleValue(),
                row.text("weather"),
                row.has("trouble") ? row.text("trouble") : "",
                quantity,
                hours);
    }

    /** @param number 1 for the first day itself */
    private static LocalDate workingDay(LocalDate first, int number) {
        LocalDate day = first;
        for (int n = 1; n < number; n++) {
            day = day.plusDays(day.getDayOfWeek() == DayOfWeek.FRIDAY ? 3 : 1);
        }
        return day;
    }
}
