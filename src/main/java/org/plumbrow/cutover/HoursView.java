package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.MinuteWords;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.HourRanking;
import org.plumbrow.calc.outage.ranking.HourWindow;
import org.plumbrow.calc.outage.ranking.Relaxation;
import org.plumbrow.calc.outage.ranking.Verdict;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;

/**
 * The hours of the next weeks in which the power can be off, best first.
 *
 * @param days the best hour of each day; empty where none is feasible
 * @param opened one hour that somebody asked about; null for none
 * @param lookedAt how many starts were judged; 0 while the site names no utility
 * @param chanceIsGiven does anybody know what suffers on this site?
 * @param weather what the hours' weather is made from; null where there is none
 */
record HoursView(
        ProjectTitle title,
        ProjectFacts project,
        List<Day> days,
        List<Relaxation> relaxations,
        @Nullable Hour opened,
        int lookedAt,
        boolean chanceIsGiven,
        int plannedMinutes,
        @Nullable String weather,
        boolean mayBook) {

    private static final int DAYS_SHOWN = 12;
    private static final int DAYS_OPEN = 3;

    /** The best hour of one day and how many others of it are windows, too. */
    record Day(Hour best, int others) {}

    /** The days that lie open on the page. */
    public List<Day> first() {
        return days.subList(0, Math.min(DAYS_OPEN, days.size()));
    }

    /** The days that are folded. */
    public List<Day> rest() {
        return days.subList(first().size(), days.size());
    }

    /** What the page says first, as the key of the sentence. */
    public String headline() {
        return lookedAt == 0 ? "noutility" : days.isEmpty() ? "none" : "best";
    }

    static List<Day> days(HourRanking ranking, boolean chanceIsGiven) {
        Map<LocalDate, List<HourWindow>> byDay = new LinkedHashMap<>();
        ranking.windows()
                .forEach(window -> byDay.computeIfAbsent(window.start().toLocalDate(), day -> new ArrayList<>())
                        .add(window));
        return byDay.values().stream()
                .limit(DAYS_SHOWN)
                .map(windows -> new Day(new Hour(windows.get(0), chanceIsGiven), windows.size() - 1))
                .toList();
    }

    /** One hour for the page. */
    record Hour(HourWindow window, boolean chanceIsGiven) {

        private static final int MOST_OF_100 = 99;

        public LocalDate day() {
            return window.start().toLocalDate();
        }

        public LocalDateTime start() {
            return window.start();
        }

        /** "97 of 100"; never all of them. */
        public String chance() {
            OptionalDouble chance = window.chanceBack();
            if (!chanceIsGiven || chance.isEmpty()) {
                return "not given";
            }
            double of100 = Math.min(MOST_OF_100, Math.floor(100 * chance.getAsDouble() + 1e-9));
            return String.format(Locale.US, of100 >= MOST_OF_100 ? "more than %.0f of 100" : "%.0f of 100", of100);
        }

        public String margin() {
            return window.marginMinutes().isPresent()
                    ? MinuteWords.of(window.marginMinutes().getAsInt())
                    : "nothing binds";
        }

        public List<String> reasons() {
            List<String> reasons = window.reasons();
            return chanceIsGiven ? reasons : reasons.subList(1, reasons.size());
        }

        public String shape() {
            return shape(window.verdict());
        }

        public String verdict() {
            return switch (window.verdict()) {
                case MET -> "Nothing speaks against it";
                case CAUTION -> "Something to look at";
                case OPEN -> "Something is not known yet";
                case BROKEN -> "No window";
            };
        }

        /** A factor's line. */
        record Line(String what, String shape, String sentence) {}

        public List<Line> lines() {
            return window.factors().stream()
                    .map(factor -> new Line(factor.kind().words(), shape(factor.verdict()), sentence(factor)))
                    .toList();
        }

        private static String sentence(Factor factor) {
            return factor.isBroken() ? factor.sentence() + " " + factor.cure() : factor.sentence();
        }

        private static String shape(Verdict verdict) {
            return switch (verdict) {
                case MET -> "done";
                case CAUTION -> "risk";
                case OPEN -> "wait";
                case BROKEN -> "trouble";
            };
        }

        /** What happens if the generator stops half an hour into it; empty where there is none. */
        public String generatorStops() {
            return window.generatorStops()
                    .map(stopped -> stopped.shortByMinutes() > 0
                            ? String.format(
                                    Locale.US,
                                    "If the generator stops at minute %.0f, the planned ride-through ends %.0f min before"
                                            + " the power is planned to be back.",
                                    stopped.minute(),
                                    Math.ceil(stopped.shortByMinutes()))
                            : String.format(
                                    Locale.US,
                                    "If the generator stops at minute %.0f, the planned ride-through reaches to the"
                                            + " planned end.",
                                    stopped.minute()))
                    .orElse("");
        }
    }
}
