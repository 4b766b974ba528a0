package org.plumbrow.calc.duration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

class PaceLearningTest {

    private static final WorkRate TABLE = rate(40, 60, 80);
    private static final WorkRate LOPSIDED = ShippedTable.all().rate("driven-posts");

    private static WorkRate rate(double low, double typical, double high) {
        WorkRate any = ShippedTable.all().rate("racking");
        return any.paced(low, typical, high, "");
    }

    @Test
    void withoutWorkItIsTheTable() {
        LearnedPace pace = PaceLearning.of(LOPSIDED, List.of());
        assertThat(pace.rate()).isEqualTo(LOPSIDED);
        assertThat(List.of(pace.low(), pace.mean(), pace.high()))
                .containsExactly(LOPSIDED.low(), LOPSIDED.typical(), LOPSIDED.high());
    }

    /** By hand: kappa 5 + 5, alpha 3, beta0 = 12.5 (20 / t5)^2; one work exactly at the table's pace adds no scatter. */
    @Test
    void theTableCountsAsFiveCrewDays() {
        assertThat(PaceLearning.of(TABLE, List.of(new DoneWork(200, 5))).mean()).isEqualTo(50);
        LearnedPace same = PaceLearning.of(TABLE, List.of(new DoneWork(300, 5)));
        // t tables: t5 = 1.476, t6 = 1.440 at 90 % of one side
        double beta = 12.5 * Math.pow(20 / 1.476, 2);
        assertThat(same.high() - 60).isCloseTo(1.440 * Math.sqrt(beta / (3 * 10)), within(0.02));
        assertThat(60 - same.low()).isCloseTo(same.high() - 60, within(1e-9));
        assertThat(same.formula()).isEqualTo("(5 × 60 + 300) ÷ (5 + 5) = 60 %s a crew-day".formatted(TABLE.unit()));
    }

    @Test
    void theOrderOfTheWorksDoesNotMatterNorWhetherTheyComeAtOnce() {
        List<DoneWork> works = List.of(new DoneWork(100, 2), new DoneWork(90, 1), new DoneWork(30, 1.5));
        LearnedPace one = PaceLearning.of(TABLE, works);
        LearnedPace other = PaceLearning.of(TABLE, List.of(works.get(2), works.get(1), works.get(0)));
        assertThat(other.low()).isCloseTo(one.low(), within(1e-9));
        assertThat(one.mean()).isCloseTo((5 * 60 + 220) / (5 + 4.5), within(1e-9));
    }

    @Test
    void theIntervalNarrowsWithWorkAndEndsAtTheTruth() {
        Random random = new Random(7);
        double width = TABLE.high() - TABLE.low();
        List<DoneWork> works = new ArrayList<>();
        for (int doubling = 1; doubling <= 5; doubling++) {
            int upTo = 2 << doubling;
            while (works.size() < upTo) {
                works.add(new DoneWork(2 * Math.max(0, 75 + 12 * random.nextGaussian()), 2));
            }
            LearnedPace pace = PaceLearning.of(TABLE, works);
            assertThat(pace.high() - pace.low()).isLessThan(width);
            width = pace.high() - pace.low();
        }
        assertThat(width).isLessThan(8);
        assertThat(PaceLearning.of(TABLE, works).mean()).isCloseTo(75, within(3.0));
    }

    /** Crews drawn from what the table means: scatter by the inverse gamma, pace about the typical rate; nobody builds less than nothing. */
    @Test
    void theIntervalCoversTheTruthForFourOfFiveCrews() {
        for (int works : List.of(1, 4, 20)) {
            assertThat(covered(TABLE, works, 20_000)).as("works " + works).isCloseTo(0.8, within(0.025));
        }
    }

    private static double covered(WorkRate table, int works, int crews) {
        Random random = new Random(works);
        double t5 = TDistribution.of(5).inverseCumulativeProbability(0.9);
        double beta0 = 12.5 * Math.pow((table.high() - table.low()) / 2 / t5, 2);
        int covered = 0;
        for (int crew = 0; crew < crews; crew++) {
            double sigma = Math.sqrt(beta0 / (chiSquare5(random) / 2));
            double pace = table.typical() + sigma / Math.sqrt(5) * random.nextGaussian();
            LearnedPace learned = PaceLearning.of(table, works(pace, sigma, works, random));
            covered += learned.low() <= pace && pace <= learned.high() ? 1 : 0;
        }
        return (double) covered / crews;
    }

    /**
     * The same for crews as they are rather than as the model has them: paces with the table's 10, 50 and 90 points, log-normal
     * to either side, and days that scatter by two fifths of the pace. The interval may then be wider than it need be.
     */
    @Test
    void itCoversTheTruthOfCrewsThatAreNotNormalToo() {
        Random random = new Random(3);
        for (int works : List.of(1, 4, 20)) {
            int covered = 0;
            for (int crew = 0; crew < 10_000; crew++) {
                double z = random.nextGaussian() / 1.2815515655446004;
                double to = z < 0 ? LOPSIDED.low() : LOPSIDED.high();
                double pace = LOPSIDED.typical() * Math.pow(to / LOPSIDED.typical(), Math.abs(z));
                LearnedPace learned = PaceLearning.of(LOPSIDED, works(pace, 0.4 * pace, works, random));
                covered += learned.low() <= pace && pace <= learned.high() ? 1 : 0;
            }
            assertThat(covered / 10_000.0).as("works " + works).isBetween(0.78, 0.98);
        }
    }

    private static double chiSquare5(Random random) {
        return IntStream.range(0, 5)
                .mapToDouble(i -> random.nextGaussian())
                .map(z -> z * z)
                .sum();
    }

    private static List<DoneWork> works(double pace, double sigma, int works, Random random) {
        return IntStream.range(0, works)
                .mapToObj(i -> {
                    double days = 0.5 + 3 * random.nextDouble();
                    double quantity = days * pace + Math.sqrt(days) * sigma * random.nextGaussian();
                    return new DoneWork(Math.max(0, quantity), days);
                })
                .toList();
    }

    @Test
    void theNextWorkScattersMoreThanThePaceItselfAndNeverIsCertain() {
        List<DoneWork> many = IntStream.range(0, 100)
                .mapToObj(i -> new DoneWork(i % 2 == 0 ? 100 : 140, 2))
                .toList();
        LearnedPace pace = PaceLearning.of(TABLE, many);
        assertThat(pace.nextLow()).isLessThan(pace.low());
        assertThat(pace.nextHigh() - pace.nextLow()).isBetween(3.0, TABLE.high() - TABLE.low());
        assertThat(pace.rate().source()).contains("200 crew-days").contains("counts as 5");
    }

    @Test
    void daysOfAnActivityAreHeldAgainstThePlanForThatShareOfIt() {
        // 120 modules at 60 a day are planned as 2 days; half of them in 0.75 of those took 1.5 days.
        DoneWork half = DoneWork.of(TABLE, 120, 0.5, 0.75);
        assertThat(half.quantity()).isEqualTo(60);
        assertThat(half.crewDays()).isCloseTo(1.5, within(1e-9));
    }
}
