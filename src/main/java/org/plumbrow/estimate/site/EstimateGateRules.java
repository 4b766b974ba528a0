package org.plumbrow.estimate.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the gates ask of use and yield. A rule reads what was kept; with nothing kept it cannot tell. */
@Configuration(proxyBeanMethods = false)
class EstimateGateRules {

    /** Where neither branch nor utility has set a cap. */
    private static final double USUAL_MOST_OFFSET = 1.05;
    /** So much may the estimate lie below the contract's kWh. */
    private static final double TOLERANCE = 0.02;

    /** The estimate as it is kept, read once for both rules of the design. */
    private record KeptEstimate(Optional<EstimateFacts> facts) {}

    @Bean
    static GateRule sizeFitsTheUse(UseYears use, YieldBook book, SizeLimits limits) {
        return GateRule.of("signed.6", look -> {
            Double kwh =
                    use.of(look.projectId()).map(UseYears.SiteUse::kwhOfYear).orElse(null);
            if (kwh == null || kwh <= 0) {
                return new Finding.CannotTell(
                        "The use of twelve months is not known.",
                        "Under Use, type it from the bills or bring the utility’s file.");
            }
            Optional<EstimateFacts> estimate = book.ofUnchecked(look.projectId());
            if (estimate.isEmpty()) {
                return new Finding.CannotTell(
                        "There is no yield yet.", String.join(" ", book.missing(look.projectId())));
            }
            ProjectFacts project = look.project();
            UUID utility = project.site().utilityId();
            return size(kwh, estimate.get(), limits.of(project.branchId(), utility));
        });
    }

    static Finding size(double useKwh, EstimateFacts estimate, List<SizeLimits.Limit> limits) {
        double offset = estimate.kwh() / useKwh;
        String has = words(
                "%,.1f kW DC make %,.0f kWh, %.1f %% of the year’s use; %,.1f kW AC.",
                estimate.kwDc(), estimate.kwh(), 100 * offset, estimate.kwAc());
        for (SizeLimits.Limit limit : limits) {
            String over = over(limit, 100 * offset, estimate.kwAc());
            if (!over.isEmpty()) {
                return new Finding.Broken(
                        words("%s %s allows at most %s.", has, limit.whose(), over),
                        "See the size for this use, or attach the utility’s agreement.");
            }
        }
        boolean capped = limits.stream().anyMatch(limit -> limit.mostOffsetPercent() != null);
        if (!capped && offset > USUAL_MOST_OFFSET) {
            return new Finding.Broken(
                    words("%s That is more than the usual %.0f %%, and no cap is set.", has, 100 * USUAL_MOST_OFFSET),
                    "Set the utility’s cap under size limits, or choose a smaller size.");
        }
        return new Finding.Satisfied(has + (limits.isEmpty() ? " No cap is set." : " Within the caps set."));
    }

    /** @return what is exceeded, in words; empty when nothing is */
    private static String over(SizeLimits.Limit limit, double percentOfUse, double kwAc) {
        Double percent = limit.mostOffsetPercent();
        if (percent != null && percentOfUse > percent + 1e-9) {
            return words("%.1f %% of the use", percent);
        }
        Double most = limit.mostKwAc();
        return most != null && kwAc > most + 1e-9 ? words("%,.1f kW AC", most) : "";
    }

    @Bean
    static GateRule estimateNamesWeatherAndShade(YieldRows rows) {
        return GateRule.of(
                "designed.14",
                look -> kept(look, rows)
                        .facts()
                        .map(EstimateGateRules::weatherAndShade)
                        .orElseGet(EstimateGateRules::noEstimate));
    }

    static Finding weatherAndShade(EstimateFacts estimate) {
        EstimateFacts.Weather weather = estimate.weather();
        String names = words(
                "Computed with “%s” (%s%s).",
                weather.name(), weather.kind(), weather.invented() ? ", invented, for practice only" : "");
        if (estimate.horizonApplied()) {
            return new Finding.Satisfied(names + " The survey’s horizon is applied.");
        }
        boolean leftOut = estimate.remarks().contains(EstimateSource.HORIZON_LEFT_OUT);
        return leftOut
                ? new Finding.Broken(
                        names + " The survey’s horizon readings are left out.",
                        "Apply them under “how the yield is computed”.")
                : new Finding.CannotTell(
                        names + " No horizon was read.",
                        "The surveyor reads it, or the designer answers with a paper.");
    }

    @Bean
    static GateRule estimateKeepsTheContract(YieldRows rows) {
        return GateRule.of(
                "designed.15",
                look -> kept(look, rows)
                        .facts()
                        .map(estimate -> contract(look.project(), estimate))
                        .orElseGet(EstimateGateRules::noEstimate));
    }

    static Finding contract(ProjectFacts project, EstimateFacts estimate) {
        Integer kwh = project.contract().guaranteedKwhPerYear();
        if (kwh == null) {
            return new Finding.CannotTell("The contract names no kWh a year.", "Add it to the contract.");
        }
        double difference = 100 * (estimate.kwh() / kwh - 1);
        String says = words(
                "The estimate is %,.0f kWh, the contract’s figure %,d kWh: %.1f %% %s.",
                estimate.kwh(), kwh, Math.abs(difference), difference < 0 ? "less" : "more");
        return estimate.kwh() >= (1 - TOLERANCE) * kwh
                ? new Finding.Satisfied(says)
                : new Finding.Broken(
                        says, "Change the design, or tell the customer and let the branch manager waive it.");
    }

    private static Finding noEstimate() {
        return new Finding.CannotTell("There is no estimate yet.", "Open the project’s yield.");
    }

    private static KeptEstimate kept(GateLook look, YieldRows rows) {
        return look.once(
                KeptEstimate.class,
                project -> new KeptEstimate(rows.result(project.id()).map(YieldRows.Result::facts)));
    }

    private static String words(String format, Object... values) {
        return String.format(Locale.US, format, values);
    }
}
