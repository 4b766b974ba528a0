package org.plumbrow.schedule.crewweek;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Entered;

/**
 * A daily report as it is typed.
 *
 * @param lines by key of the activity; empty where none was sent
 */
record ReportForm(
        @Nullable String version,
        @Nullable String people,
        @Nullable String hours,
        @Nullable String weather,
        @Nullable String weatherHours,
        @Nullable String trouble,
        @Nullable Map<String, Line> lines) {

    private static final Range PEOPLE = new Range(1, 40, "people");
    private static final Range HOURS = new Range(0.25, 24, "hours");
    private static final Range LOST = new Range(0, 24, "hours");
    private static final int LONGEST = 2_000;

    /** What was done of one activity. */
    record Line(
            @Nullable String quantity,
            @Nullable String hours,
            @Nullable String state) {

        private static final Line NOTHING = new Line("", "", "");

        private boolean isEmpty() {
            return (Entered.text(quantity) + Entered.text(hours) + Entered.text(state)).isEmpty();
        }
    }

    /** An empty line for each that was not sent: the page asks for every activity. */
    private static final class Lines extends HashMap<String, Line> {

        private static final long serialVersionUID = 1;

        private Lines(Map<String, Line> sent) {
            super(sent);
        }

        @Override
        public Line get(Object key) {
            return getOrDefault(key, Line.NOTHING);
        }
    }

    ReportForm {
        lines = new Lines(lines == null ? Map.of() : lines);
    }

    /** What may be typed, as the hints say it. */
    record Limits(String people, String hours, String lost) {}

    static Limits limits() {
        return new Limits(Entered.hint(PEOPLE), Entered.hint(HOURS), Entered.hint(LOST));
    }

    /** As it stands; a new one begins with the crew's people and the branch's hours. */
    static ReportForm of(ReportSheet sheet, String usualHours) {
        Optional<DailyReport> known = sheet.written().map(ReportSheet.Written::report);
        return new ReportForm(
                Long.toString(sheet.version()),
                Integer.toString(
                        known.map(DailyReport::people).orElse(sheet.crew().size())),
                known.map(report -> text(report.hours())).orElse(usualHours),
                known.map(DailyReport::weather).orElse(DayWeather.DRY).name(),
                known.map(DailyReport::weatherHours)
                        .filter(lost -> lost.signum() > 0)
                        .map(ReportForm::text)
                        .orElse(""),
                known.map(DailyReport::trouble).orElse(""),
                sheet.works().stream()
                        .collect(Collectors.toMap(
                                ReportSheet.Work::key,
                                work -> written(known.flatMap(report -> report.line(work.id()))))));
    }

    private static Line written(Optional<DailyReport.Line> line) {
        return line.map(known -> new Line(text(known.quantity()), text(known.hours()), known.done() ? "DONE" : ""))
                .orElse(Line.NOTHING);
    }

    private static String text(@Nullable BigDecimal figure) {
        return figure == null ? "" : ReportRows.plain(figure).toPlainString();
    }

    /** Read; what cannot be read leaves a sentence at its field. */
    DailyReport read(Entered entered, ReportSheet sheet) {
        List<DailyReport.Line> read = new ArrayList<>();
        for (ReportSheet.Work work : sheet.works()) {
            Line typed = lines.get(work.key());
            if (!typed.isEmpty()) {
                read.add(line(entered, at(work), typed, work));
            }
        }
        String said = entered.within("trouble", "the trouble", trouble, LONGEST);
        if (read.isEmpty() && said.isEmpty()) {
            entered.refuse("trouble", "Write above what was done, or here what kept the crew from it.");
        }
        DailyReport report = new DailyReport(
                Entered.version(version),
                (int) Math.rint(whole(entered, "people", people)),
                BigDecimal.valueOf(entered.required("hours", "the hours on the site", hours, HOURS)),
                entered.choice("weather", DayWeather.class, weather).orElse(DayWeather.DRY),
                orZero(entered.number("weatherHours", "the hours that the weather took", weatherHours, LOST)),
                said,
                read);
        return agreeing(entered, report);
    }

    /** No more hours than there were on the site. */
    private static DailyReport agreeing(Entered entered, DailyReport report) {
        BigDecimal spent =
                report.lines().stream().map(DailyReport.Line::hours).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (entered.errors().hasErrors()) {
            return report;
        }
        String onSite = text(report.hours());
        if (spent.compareTo(report.hours()) > 0) {
            entered.refuse(
                    "hours",
                    "The works above took %s hours together, more than these %s. Where the crew was split, write of each work its share."
                            .formatted(text(spent), onSite));
        }
        if (report.weatherHours().compareTo(report.hours()) > 0) {
            entered.refuse(
                    "weatherHours", "Write at most the %s hours that the crew was on the site.".formatted(onSite));
        }
        return report;
    }

    private static String at(ReportSheet.Work work) {
        return "lines[" + work.key() + "].";
    }

    private static double whole(Entered entered, String field, @Nullable String typed) {
        Integer value = entered.whole(field, "the people", typed, PEOPLE);
        if (value == null && Entered.text(typed).isEmpty()) {
            entered.refuse(field, "Write how many people of the crew were there, 1 to 40.");
        }
        return value == null ? 1 : value;
    }

    private static BigDecimal orZero(@Nullable BigDecimal figure) {
        return figure == null ? BigDecimal.ZERO : figure;
    }

    private static DailyReport.Line line(Entered entered, String at, Line typed, ReportSheet.Work work) {
        double spent = entered.required(at + "hours", "the hours on " + work.title(), typed.hours, HOURS);
        BigDecimal quantity = work.counted().isEmpty()
                ? null
                : entered.number(at + "quantity", "how many " + work.unit(), typed.quantity, work.quantity());
        return new DailyReport.Line(work.id(), quantity, BigDecimal.valueOf(spent), "DONE".equals(typed.state));
    }

    /** Every field, for the page that lays theirs beside yours. */
    List<Written> written(ReportSheet sheet) {
        List<Written> all = new ArrayList<>(List.of(
                Written.of("people", "people", people),
                Written.of("hours on the site", "hours", hours),
                Written.of("weather", "weather", weather, Entered.text(weather).toLowerCase(Locale.ROOT)),
                Written.of("hours that the weather took", "weatherHours", weatherHours),
                Written.of("trouble", "trouble", trouble)));
        for (ReportSheet.Work work : sheet.works()) {
            Line line = lines.get(work.key());
            String state = Entered.text(line.state).isEmpty() ? "goes on" : "finished";
            all.add(Written.of(work.title() + ", done that day", at(work) + "quantity", line.quantity));
            all.add(Written.of(work.title() + ", hours", at(work) + "hours", line.hours));
            all.add(Written.of(work.title() + ", state", at(work) + "state", line.state, state));
        }
        return all;
    }
}
