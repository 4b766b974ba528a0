package org.plumbrow.schedule.why;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.schedule.plan.BindingChain;
import org.plumbrow.schedule.plan.PlannedRow;

/** A chain as sentences and bars. Pure. */
final class ChainLinks {

    private static final int WHOLE = 1000;
    private static final int SLIVER = 8;

    private final UUID project;
    private final Map<UUID, String> projects;
    private final Map<UUID, String> crews;
    private final LocalDate today;
    private final long days;

    /** @param date with which the picture ends */
    ChainLinks(UUID project, Map<UUID, String> projects, Map<UUID, String> crews, LocalDate today, LocalDate date) {
        this.project = project;
        this.projects = projects;
        this.crews = crews;
        this.today = today;
        days = Math.max(1, ChronoUnit.DAYS.between(today, date) + 1);
    }

    List<WhyView.Link> of(List<PlannedRow> chain) {
        return chain.stream().map(this::link).toList();
    }

    private WhyView.Link link(PlannedRow row) {
        int from = place(row.start().date());
        int to = place(row.finish().date().plusDays(1));
        int length = Math.max(SLIVER, to - from);
        return new WhyView.Link(
                row.title() + ofAnother(row),
                when(row),
                sentence(row.boundSentence()),
                Math.min(from, WHOLE - length),
                length,
                row.isWait());
    }

    /** Where most of the time goes, in calendar days. */
    String longest(List<PlannedRow> chain) {
        return chain.size() < 2
                ? ""
                : chain.stream()
                        .max(Comparator.comparingLong(ChainLinks::days))
                        .map(row -> "Most of the time goes to %s%s: %d of the %d days from today to the date."
                                .formatted(
                                        row.words() + ofAnother(row), row.isWait() ? ", a wait" : "", days(row), days))
                        .orElse("");
    }

    /** What bound the first of the chain; where it is another job's, whose. */
    String cause(BindingChain chain) {
        return chain.links().stream()
                .findFirst()
                .filter(first -> !first.projectId().equals(project))
                .map(first -> first.boundKind().equals("TODAY")
                        ? "It begins with " + first.words() + ofAnother(first) + ", which can start at once."
                        : first.title() + ofAnother(first) + ": " + first.boundSentence())
                .orElseGet(() -> sentence(chain.cause()));
    }

    private String ofAnother(PlannedRow row) {
        return row.projectId().equals(project) ? "" : ", " + projects.getOrDefault(row.projectId(), "");
    }

    private static long days(PlannedRow row) {
        return ChronoUnit.DAYS.between(row.start().date(), row.finish().date()) + 1;
    }

    private int place(LocalDate day) {
        long passed = ChronoUnit.DAYS.between(today, day);
        return (int) Math.max(0, Math.min(WHOLE, WHOLE * passed / days));
    }

    private String when(PlannedRow row) {
        String crew = row.crewId().map(crews::get).map(name -> ", " + name).orElse("");
        String first = DayWords.of(row.start().date());
        String last = DayWords.of(row.finish().date());
        return (first.equals(last) ? first : first + " to " + last) + crew;
    }

    /** On the project's own page its name need not be said. */
    private String sentence(String bound) {
        String sentence = bound.replace(projects.getOrDefault(project, "") + ", ", "");
        return sentence.isEmpty() ? "" : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
