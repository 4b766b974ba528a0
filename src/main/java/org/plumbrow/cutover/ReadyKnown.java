package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.FactorKind;
import org.plumbrow.calc.outage.ranking.Verdict;
import org.plumbrow.cutover.ReadySheet.Light;
import org.plumbrow.cutover.ReadySheet.Line;
import org.plumbrow.cutover.ridethrough.LoadAnswers;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** What the records know of a booked outage's readiness: notices, answers, and its hour judged as any other. */
@Component
class ReadyKnown {

    private static final String STEPS = "Steps of the day from the design";
    static final Set<FactorKind> CREW = EnumSet.of(FactorKind.CREW, FactorKind.PEOPLE, FactorKind.MACHINE);
    private static final Set<FactorKind> LOADS = EnumSet.of(FactorKind.RIDE_THROUGH, FactorKind.REVERSAL);
    static final Set<FactorKind> GENERATOR =
            EnumSet.of(FactorKind.GENERATOR_FIT, FactorKind.GENERATOR_FUEL, FactorKind.GENERATOR_RUN);
    private static final Set<FactorKind> ANIMALS = EnumSet.of(
            FactorKind.FLOCK,
            FactorKind.FEEDING,
            FactorKind.HEAT_STRESS,
            FactorKind.AFTER_MILKING,
            FactorKind.BEFORE_MILKING,
            FactorKind.TANK);
    private static final Set<FactorKind> TIMES = EnumSet.of(
            FactorKind.SLOT,
            FactorKind.UTILITY_DAY,
            FactorKind.DAYLIGHT,
            FactorKind.BLACKOUT,
            FactorKind.BUSINESS_HOURS,
            FactorKind.CUSTOMER_THERE);
    static final Set<FactorKind> WEATHER =
            EnumSet.of(FactorKind.WIND, FactorKind.RAIN, FactorKind.LIGHTNING, FactorKind.COLD);

    private final WindowFinder finder;
    private final WindowHour hour;
    private final StepsOfDay steps;

    ReadyKnown(WindowFinder finder, WindowHour hour, StepsOfDay steps) {
        this.steps = steps;
        this.finder = finder;
        this.hour = hour;
    }

    List<Line> of(ProjectFacts project, OutageFacts window, OnSite site) {
        WindowFinder.Asking asking = finder.asking(project).planning(window.outageMinutes(), window.crewId());
        List<Line> lines = new ArrayList<>();
        lines.add(notice(window, asking));
        lines.add(line(
                "Utility’s confirmation number",
                window.utilityConfirmation() != null,
                "Number " + window.utilityConfirmation() + ".",
                "The utility has not confirmed."));
        lines.add(line(
                "Customer told",
                window.customerTold() != null,
                "Told, "
                        + (window.customerTold() == null
                                ? ""
                                : window.customerTold().how()) + ".",
                "The customer has not been told."));
        lines.add(agreed(window));
        lines.add(stepsOfDay(
                steps.inForce(project.id()).orElse(null),
                steps.made(window.id()).orElse(null)));
        List<Factor> factors = hour.factors(project, window, site, asking);
        add(lines, "Permit and inspection, as written down", factors, Set.of(FactorKind.PERMIT));
        add(lines, "Crew and qualified people", factors, CREW);
        add(lines, "Hours of utility, daylight and customer", factors, TIMES);
        add(lines, "Animals and milk", factors, ANIMALS);
        add(lines, "What is on site stands, latest reversal", factors, LOADS);
        add(lines, "Generator carries the load", factors, GENERATOR);
        if (LoadAnswers.runIsAhead(site, window.day(), asking.today())) {
            lines.add(new Line(
                    "Generator’s run under the farm’s load",
                    Light.NOT_YET,
                    "Planned, and has not been yet. Write down the day on which it ran."));
        }
        add(lines, "Weather of such hours", factors, WEATHER);
        if (!site.saysWhatSuffers() && !project.site().loads().isEmpty()) {
            lines.add(new Line(
                    "What is on site",
                    Light.NOT_YET,
                    "Nobody has written down what suffers without power; no ride-through is known."));
        }
        return lines;
    }

    private static Line line(String what, boolean ready, String yes, String no) {
        return new Line(what, ready ? Light.READY : Light.NOT_YET, ready ? yes : no);
    }

    /** @param way by the revision in force; @param made from which the steps were made */
    static Line stepsOfDay(@Nullable CutoverWay way, StepsOfDay.@Nullable Made made) {
        if (way == null) {
            return new Line(
                    STEPS,
                    Light.READY,
                    "No revision of the design is frozen here: the steps are the general ones. Compare them with the drawing.");
        }
        if (made == null) {
            return new Line(
                    STEPS,
                    Light.NOT_YET,
                    "Not made yet from design revision " + way.revision() + ". " + way.sentence());
        }
        return made.revision().equals(way.revision())
                ? new Line(STEPS, Light.READY, "Made from design revision " + way.revision() + ". " + way.sentence())
                : new Line(
                        STEPS,
                        Light.NOT_YET,
                        "Made from design revision " + made.revision() + "; the design has changed, revision "
                                + way.revision() + " is in force. Look at them and make them anew. " + way.sentence());
    }

    private static Line agreed(OutageFacts window) {
        OutageFacts.Answer answer = window.customerAnswer();
        return answer != null && !answer.agrees()
                ? new Line("Customer agrees", Light.RED, "The day does not work for the customer.")
                : line("Customer agrees", answer != null, "The customer agrees.", "The customer has not said yet.");
    }

    private static Line notice(OutageFacts window, WindowFinder.Asking asking) {
        ZoneId zone = asking.branch().zone();
        if (window.utilityTold() == null || asking.utility().isEmpty()) {
            return new Line("Notice to the utility", Light.NOT_YET, "The utility has not been told.");
        }
        LocalDate told = LocalDate.ofInstant(window.utilityTold().at(), zone);
        boolean met = asking.utility().get().notice().isMet(told, window.day());
        return new Line(
                "Notice to the utility",
                met ? Light.READY : Light.RED,
                "Told " + DayWords.of(told) + (met ? ", in time." : ": too late for its notice."));
    }

    /** The worst of those factors speaks, with every sentence that is not met; nothing where none of them was judged. */
    private static void add(List<Line> lines, String what, List<Factor> factors, Set<FactorKind> kinds) {
        List<Factor> these =
                factors.stream().filter(factor -> kinds.contains(factor.kind())).toList();
        Optional<Verdict> worst = these.stream().map(Factor::verdict).max(Comparator.naturalOrder());
        worst.ifPresent(verdict -> lines.add(new Line(what, light(verdict, kinds), sentence(these, verdict))));
    }

    /** What a typical year does not know of the weather is asked of a person who looks at the forecast. */
    private static Light light(Verdict verdict, Set<FactorKind> kinds) {
        return switch (verdict) {
            case MET, CAUTION -> Light.READY;
            case OPEN -> kinds == WEATHER ? Light.READY : Light.NOT_YET;
            case BROKEN -> Light.RED;
        };
    }

    private static String sentence(List<Factor> factors, Verdict worst) {
        return String.join(
                " ",
                factors.stream()
                        .filter(factor -> worst == Verdict.MET || factor.verdict() != Verdict.MET)
                        .map(Factor::sentence)
                        .toList());
    }
}
