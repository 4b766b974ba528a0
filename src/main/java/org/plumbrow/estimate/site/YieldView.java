package org.plumbrow.estimate.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Normal;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.project.ProjectFacts;

/**
 * The yield of a project as its page shows it.
 *
 * @param facts null while something is missing
 * @param contractKwh the year's kWh that the contract guarantees; null where it has none
 */
record YieldView(
        ProjectFacts project,
        @Nullable EstimateFacts facts,
        List<String> missing,
        List<MonthRow> months,
        List<Chance> chances,
        @Nullable HourView hour,
        @Nullable Integer contractKwh) {

    /**
     * What is exceeded with a confidence.
     *
     * @param words "in nine years of ten" @param tenYearsKwh the mean of ten years
     * @param z standard deviations below the middle
     */
    record Chance(String name, String words, double oneYearKwh, double tenYearsKwh, double z) {

        private static final List<Chance> ASKED = List.of(
                new Chance("P50", "in every second year", 0, 0, 0.5),
                new Chance("P75", "in three years of four", 0, 0, 0.75),
                new Chance("P90", "in nine years of ten", 0, 0, 0.9),
                new Chance("P99", "in 99 years of 100", 0, 0, 0.99));

        static List<Chance> of(EstimateFacts facts) {
            List<Chance> all = new ArrayList<>();
            for (Chance each : ASKED) {
                all.add(new Chance(
                        each.name,
                        each.words,
                        facts.exceededKwh(each.z, 1),
                        facts.exceededKwh(each.z, 10),
                        Normal.quantile(each.z)));
            }
            return all;
        }
    }

    static YieldView of(
            ProjectFacts project, Optional<EstimateFacts> facts, List<String> missing, @Nullable HourView hour) {
        return new YieldView(
                project,
                facts.orElse(null),
                missing,
                facts.map(known -> MonthRow.of(known.kwhByMonth())).orElse(List.of()),
                facts.map(Chance::of).orElse(List.of()),
                hour,
                project.contract().guaranteedKwhPerYear());
    }

    /** Standard deviation of a single year, as a share. */
    public double sigmaOfOneYear() {
        return facts == null ? 0 : facts.spread().share(1);
    }
}
