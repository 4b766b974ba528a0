package org.plumbrow.calc.leadtime;

import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;

/**
 * How many days a wait takes, as far as it is known; days of the table's own kind, working or calendar.
 *
 * @param table what it was learned from besides the answers
 * @param tenth of 100 waits ten are no longer @param even half are no longer @param eighty of 100 eighty are no longer
 * @param ninety of 100 ninety are no longer
 * @param answers how many past waits count @param least of them @param most of them; both 0 without any
 */
public record LearnedLeadTime(
        WaitTime table,
        double tenth,
        double even,
        double eighty,
        double ninety,
        int answers,
        double least,
        double most) {

    /** A row of the table with what was learned; without answers the table's own. */
    public WaitTime row() {
        if (!isLearned()) {
            return table;
        }
        return new WaitTime(
                table.code(),
                table.words(),
                table.dayKind(),
                new Spread(tenth, even, ninety),
                even,
                WaitTime.Shape.LOG_NORMAL,
                "learned from %d answer%s, the table counts as %.0f"
                        .formatted(answers, answers == 1 ? "" : "s", LeadTimeLearning.TABLE_WAITS));
    }

    public boolean isLearned() {
        return answers > 0;
    }

    /** Whole days until an even chance, at least one. */
    public int evenDays() {
        return days(even);
    }

    /** Whole days by which four of five have come, at least one. */
    public int eightyDays() {
        return days(eighty);
    }

    private static int days(double days) {
        return Math.max(1, (int) Math.ceil(days - 1e-9));
    }

    /** The share of the table in the middle of the result, 0 to 1. */
    public double shareOfTable() {
        return LeadTimeLearning.TABLE_WAITS / (LeadTimeLearning.TABLE_WAITS + answers);
    }
}
