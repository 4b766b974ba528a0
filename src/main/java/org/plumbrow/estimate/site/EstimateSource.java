package org.plumbrow.estimate.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.estimate.DesignedSystem;
import org.plumbrow.project.ProjectFacts;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Gathers what a project's estimate is made from: weather, system, terms, horizon. */
@Component
class EstimateSource {

    static final String HORIZON_LEFT_OUT = "The survey’s horizon readings are left out by choice.";

    private static final double FAR_KM = 50;
    private static final double KM_PER_MILE = 1.609344;

    private final WeatherRows weather;
    private final YieldRows rows;
    private final ObjectProvider<DesignedSystem> design;
    private final SurveyedHorizon survey;

    EstimateSource(WeatherRows weather, YieldRows rows, ObjectProvider<DesignedSystem> design, SurveyedHorizon survey) {
        this.weather = weather;
        this.rows = rows;
        this.design = design;
        this.survey = survey;
    }

    /** A year of the library as seen from a project. @param km null where the project has no coordinates */
    record Offer(WeatherCard card, @Nullable Double km) {}

    /**
     * @param offered the library's years for this project, the nearest first
     * @param card the one that counts; null when the library is empty
     * @param horizon what the survey read, applied or not
     * @param inputs null while something is missing
     * @param missing in sentences
     */
    record Gathered(
            ProjectFacts project,
            YieldRows.Kept kept,
            List<Offer> offered,
            @Nullable WeatherCard card,
            List<Horizon.Reading> horizon,
            @Nullable EstimateInputs inputs,
            List<String> missing) {}

    /** The system that counts, with what had to be assumed or is missing. */
    private record Found(
            String source, List<DesignedSystem.Group> groups, List<String> remarks, List<String> missing) {}

    Gathered of(ProjectFacts project) {
        YieldRows.Kept kept = rows.terms(project.id());
        List<Offer> offered = offers(project, kept);
        Optional<Offer> chosen = chosen(kept, offered);
        List<Horizon.Reading> horizon = survey.of(project.id());
        Found found = found(project, kept.terms());
        List<String> missing = new ArrayList<>(found.missing());
        if (chosen.isEmpty()) {
            missing.add(0, "The branch has no weather yet. Bring a file, or type twelve monthly means.");
        }
        EstimateInputs inputs =
                missing.isEmpty() ? computable(inputs(kept, chosen.orElseThrow(), found, horizon), missing) : null;
        WeatherCard card = chosen.map(Offer::card).orElse(null);
        return new Gathered(project, kept, offered, card, horizon, inputs, List.copyOf(missing));
    }

    private List<Offer> offers(ProjectFacts project, YieldRows.Kept kept) {
        ProjectFacts.Site site = project.site();
        return weather.ofBranch(project.branchId()).stream()
                .filter(card -> !card.ended() || card.id().equals(kept.weatherId()))
                .map(card -> new Offer(
                        card, card.kmTo(site.latitudeDeg(), site.longitudeDeg()).orElse(null)))
                .sorted(Comparator.comparingDouble(offer -> offer.km() == null ? 0 : offer.km()))
                .toList();
    }

    private static Optional<Offer> chosen(YieldRows.Kept kept, List<Offer> offered) {
        return offered.stream()
                .filter(offer -> kept.weatherId() == null
                        ? !offer.card().ended()
                        : offer.card().id().equals(kept.weatherId()))
                .findFirst();
    }

    private Found found(ProjectFacts project, YieldTerms terms) {
        DesignedSystem known = design.getIfAvailable();
        Optional<DesignedSystem.Designed> drawn = known == null ? Optional.empty() : known.of(project.id());
        if (drawn.isPresent()) {
            return new Found(drawn.get().source(), drawn.get().groups(), List.of(), List.of());
        }
        ContractSystem contract = new ContractSystem(project.contract(), terms);
        List<DesignedSystem.Group> groups = contract.missing().isEmpty() ? contract.groups() : List.of();
        return new Found("the contract", groups, contract.remarks(), contract.missing());
    }

    /** @return null where a figure is none that can be computed with; then that is among what is missing */
    private static @Nullable EstimateInputs computable(EstimateInputs inputs, List<String> missing) {
        try {
            inputs.calcGroups();
            return inputs;
        } catch (Range.OutOfRange no) {
            missing.add("In %s the %s is %s; %s to %s %s can be computed with."
                    .formatted(
                            inputs.source(),
                            no.quantity(),
                            no.value(),
                            no.range().least(),
                            no.range().most(),
                            no.range().unit())
                    .strip());
            return null;
        }
    }

    private static EstimateInputs inputs(YieldRows.Kept kept, Offer offer, Found found, List<Horizon.Reading> horizon) {
        boolean applied = kept.terms().useHorizon();
        return new EstimateInputs(
                EstimateInputs.MODEL,
                offer.card().id(),
                kept.weatherId() != null,
                offer.card().invented(),
                offer.km(),
                found.source(),
                found.groups(),
                kept.terms(),
                applied ? horizon : List.of(),
                remarks(offer, found, horizon, applied));
    }

    private static List<String> remarks(Offer offer, Found found, List<Horizon.Reading> horizon, boolean applied) {
        List<String> remarks = new ArrayList<>(found.remarks());
        Double km = offer.km();
        if (km != null && km > FAR_KM) {
            remarks.add("The weather is from %,.0f miles away. Bring the file of a nearer station where there is one."
                    .formatted(km / KM_PER_MILE));
        }
        if (horizon.isEmpty()) {
            remarks.add("No horizon was read on the survey, so no shade from around is counted.");
        } else if (!applied) {
            remarks.add(HORIZON_LEFT_OUT);
        }
        return List.copyOf(remarks);
    }
}
