package org.plumbrow.schedule.activity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.DoneWork;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.LearnedPace;
import org.plumbrow.calc.duration.PaceLearning;
import org.plumbrow.calc.duration.WorkRate;

/**
 * The paces of a branch and of its crews, learned from finished work. A crew starts from what the other crews' work made of
 * the table, and that counts as five crew-days again; so nobody's work counts twice. Pure.
 */
public final class LearnedRates {

    private final DurationTables table;
    private final Map<String, Map<UUID, List<DoneWork>>> works;

    /** @param works by code of the rate, then by crew */
    LearnedRates(DurationTables table, Map<String, Map<UUID, List<DoneWork>>> works) {
        this.table = table;
        this.works = works;
    }

    /**
     * What is known of one row.
     *
     * @param all crews together
     * @param byCrew of those that have worked by it
     */
    public record OfRow(LearnedPace all, Map<UUID, LearnedPace> byCrew) {}

    /** Of rows by which there is finished work, in the order of their words. */
    public List<OfRow> rows() {
        return table.rates().stream()
                .filter(rate -> works.containsKey(rate.code()))
                .sorted(Comparator.comparing(WorkRate::words))
                .map(this::ofRow)
                .toList();
    }

    private OfRow ofRow(WorkRate prior) {
        Map<UUID, List<DoneWork>> own = works.get(prior.code());
        Map<UUID, LearnedPace> byCrew = new TreeMap<>();
        own.forEach((crew, done) -> byCrew.put(
                crew, PaceLearning.of(PaceLearning.of(prior, without(own, crew)).rate(), done)));
        return new OfRow(PaceLearning.of(prior, without(own, null)), byCrew);
    }

    private static List<DoneWork> without(Map<UUID, List<DoneWork>> all, @org.jspecify.annotations.Nullable UUID crew) {
        return all.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(crew))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    /** The tables of a branch, and those of each crew that has work of its own. */
    record Tables(PlanningSettings all, Map<UUID, PlanningSettings> byCrew) {}

    Tables over(PlanningSettings settings) {
        List<WorkRate> all = new ArrayList<>();
        Map<UUID, List<WorkRate>> byCrew = new HashMap<>();
        for (OfRow row : rows()) {
            all.add(row.all().rate());
            row.byCrew()
                    .forEach((crew, pace) -> byCrew.computeIfAbsent(crew, id -> new ArrayList<>())
                            .add(pace.rate()));
        }
        DurationTables learned = all.isEmpty() ? table : table.withRates(all);
        Map<UUID, PlanningSettings> ofCrews = new HashMap<>();
        byCrew.forEach((crew, rates) -> ofCrews.put(crew, with(settings, learned.withRates(rates))));
        return new Tables(with(settings, learned), ofCrews);
    }

    private static PlanningSettings with(PlanningSettings settings, DurationTables durations) {
        return new PlanningSettings(
                settings.branch(), settings.utilities(), settings.permitOffices(), durations, settings.weather());
    }
}
