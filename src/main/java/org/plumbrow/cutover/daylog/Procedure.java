package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.daylog.ProcedureTable.Line;
import org.plumbrow.project.ProjectFacts;

/**
 * The procedure fitted to the job: a job without a generator has no step 12. The minutes of the steps without power are
 * those that the outage was planned with.
 */
final class Procedure {

    static final String POWER_OFF = "4";
    static final String CONNECT = "7";
    /** Volts, rotation and load before anything is opened. */
    static final String READ_BEFORE = "2";

    static final String UTILITY_CLOSES = "10";
    static final String LOADS_BACK = "11";
    static final String GENERATOR_BACK = "12";
    static final String LAST = "14";

    private Procedure() {}

    /** The general one, of a job whose design is not frozen here. */
    static List<LogStep> of(boolean generator, OutageMinutes minutes) {
        return of(null, generator, minutes);
    }

    /** @param way by the design revision in force; null for the general procedure */
    static List<LogStep> of(@Nullable CutoverWay way, boolean generator, OutageMinutes minutes) {
        List<LogStep> steps = new ArrayList<>();
        for (Line line : ProcedureTable.LINES) {
            LogStep general = step(line, steps.size() + 1, generator, minutes);
            steps.add(way == null ? general : new FittedSteps(way).fitted(general));
        }
        return List.copyOf(steps);
    }

    /** On the site, or by the design. */
    static boolean hasGenerator(ProjectFacts project, @Nullable CutoverWay way) {
        return project.site().generator() || way != null && !way.transfer().isEmpty();
    }

    private static LogStep step(Line line, int position, boolean generator, OutageMinutes minutes) {
        String what = generator && !line.withGenerator().isEmpty() ? line.withGenerator() : line.what();
        int typical = line.minutes() > 0 || line.isHold() ? line.minutes() : typical(line.code(), minutes);
        return new LogStep(
                line.code(),
                position,
                line.isHold(),
                line.words(),
                what,
                line.who(),
                typical,
                whyNot(line, generator),
                null);
    }

    private static @Nullable String whyNot(Line line, boolean generator) {
        return line.code().equals(GENERATOR_BACK) && !generator ? "no generator here" : null;
    }

    private static int typical(String code, OutageMinutes minutes) {
        return minutes.parts().stream()
                .filter(part -> Integer.toString(part.step()).equals(code))
                .mapToInt(OutageMinutes.Part::typical)
                .sum();
    }
}
