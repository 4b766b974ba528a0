package org.plumbrow.schedule.crewweek;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Entered;

/**
 * A daily report as it is typed.
 *
 * @param lines one for each activity of the page, in its order
 */
record ReportForm(
        @Nullable String version,
        @Nullable String people,
        @Nullable String hours,
        @Nullable String weather,
        @Nullable String weatherHours,
        @Nullable String trouble,
        @Nullable List<@Nullable Line> lines) {

    private static final Range PEOPLE = new Range(1, 40, "people");
    private static final Range HOURS = new Range(0.25, 24, "hours");
    private static final Range LOST = new Range(0, 24, "hours");
    private static final Range QUANTITY = new Range(0, 100_000, "");
    private static final int LONGEST = 2_000;
    /** So many there are, whatever was sent; a project has some twenty activities. */
    private static final int LINES = 120;

    /** What was done of one activity. */
    record Line(
            @Nullable String key,
            @Nullable String quantity,
            @Nullable String hours,
            @Nullable String state) {

        private static final Line NOTHING = new Line("", "", "", "");

        private boolean isEmpty() {
            return (Entered.text(quantity) + Entered.text(hours) + Entered.text(state)).isEmpty();
        }
    }

    ReportForm {
        List<@Nullable Line> sent = lines == null ? List.of() : lines;
        lines = IntStream.range(0, LINES)
                .mapToObj(i -> i < sent.size() && sent.get(i) != null ? sent.get(i) : Line.NOTHING)
                .toList();
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
                known.map(report -> text(report.weatherHours())).orElse(""),
                known.map(DailyReport::trouble).orElse(""),
                sheet.works().stream()
                        .map(work -> written(work.key(), known.flatMap(report -> report.line(work.id()))))
                        .toList());
    }

    private static Line written(String key, Optional<DailyReport.Line> line) {
        return line.map(known -> new Line(key, text(known.quantity()), text(known.hours()), known.done() ? "DONE" : ""))
                .orElse(new Line(key, "", "", ""));
    }

    private static String text(@Nullable BigDecimal figure) {
        return figure == null ? "" : ReportRows.plain(figure).toPlainString();
    }

    /** Read; what cannot be read leaves a sentence at its field. */
    DailyReport read(Entered entered, ReportSheet sheet) {
        Map<String, ReportSheet.Work> works =
                sheet.works().stream().collect(Collectors.toMap(ReportSheet.Work::key, Function.identity()));
        List<DailyReport.Line> read = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            ReportSheet.Work work = works.get(Entered.text(lines.get(i).key));
            if (work != null && !lines.get(i).isEmpty()) {
                read.add(line(entered, "lines[" + i + "].", lines.get(i), work));
            }
        }
        String said = entered.within("trouble", "the trouble", trouble, LONGEST);
        if (read.isEmpty() && said.isEmpty()) {
            entered.refuse("trouble", "Write above what was done, or here what kept the crew from it.");
        }
        return new DailyReport(
                Entered.version(version),
                (int) Math.rint(whole(entered, "people", people)),
                BigDecimal.valueOf(entered.required("hours", "the hours on the site", hours, HOURS)),
                entered.choice("weather", DayWeather.class, weather).orElse(DayWeather.DRY),
                orZero(entered.number("weatherHours", "the hours that the weather took", weatherHours, LOST)),
                said,
                read);
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
                : entered.number(at + "quantity", "how many " + work.unit(), typed.quantity, QUANTITY);
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
        Map<String, String> titles =
                sheet.works().stream().collect(Collectors.toMap(ReportSheet.Work::key, ReportSheet.Work::title));
        for (int i = 0; i < sheet.works().size(); i++) {
            Line line = lines.get(i);
            String title = titles.getOrDefault(Entered.text(line.key), "another activity");
            String at = "lines[" + i + "].";
            all.add(Written.of(title, at + "key", line.key, title));
            all.add(Written.of(title + ", done that day", at + "quantity", line.quantity));
            all.add(Written.of(title + ", hours", at + "hours", line.hours));
            all.add(Written.of(
                    title + ", state",
                    at + "state",
                    line.state,
                    Entered.text(line.state).isEmpty() ? "goes on" : "finished"));
        }
        return all;
    }
}
