package org.plumbrow.estimate.savings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.web.Words;

/** What the savings are made from: each figure with where it comes from. */
final class SavingsGrounds {

    private static final String USUAL = "common practice, no source";
    private static final String TYPED = "written for this project";

    private final List<Ground> grounds = new ArrayList<>();

    /**
     * @param key of its name
     * @param name where it has one of its own; else null
     * @param href where it can be changed; null for the terms of this page
     */
    record Ground(
            String key,
            @Nullable String name,
            String value,
            String source,
            @Nullable String href) {}

    static List<Ground> of(SavingsBook.Basis basis, SavingsFigures figures, Words words, String project) {
        SavingsGrounds all = new SavingsGrounds();
        all.read(basis, words, project);
        all.prices(basis.kept(), figures);
        all.years(basis.kept(), figures);
        return List.copyOf(all.grounds);
    }

    private void read(SavingsBook.Basis basis, Words words, String project) {
        var facts = basis.facts();
        grounds.add(new Ground(
                "estimate.savings.kwh",
                null,
                words.number(facts.kwh(), 0) + " kWh",
                "the yield by %s, weather %s"
                        .formatted(facts.source(), facts.weather().name()),
                project + "/yield"));
        grounds.add(new Ground(
                "estimate.savings.share",
                null,
                words.number(100 * basis.self().onSiteShare().orElse(0.0), 1) + " %",
                "use beside production, " + basis.self().basis().words(),
                project + "/use"));
        String price = basis.priceUsd() == null ? "not known" : words.money(basis.priceUsd());
        grounds.add(new Ground("estimate.savings.price", null, price, "the contract", project + "/contract"));
    }

    private void prices(SavingsRows.Kept kept, SavingsFigures figures) {
        SavingsTerms terms = kept.terms();
        add(kept, "estimate.savings.rate", figures.rate(terms.ratePerKwh()));
        add(kept, "estimate.savings.rise", figures.percent(terms.escalationPercent()) + " a year");
        add(kept, "estimate.savings.export", figures.rate(terms.exportPerKwh()));
        add(kept, "estimate.savings.exportrise", figures.percent(terms.exportEscalationPercent()) + " a year");
        add(
                kept,
                "estimate.savings.fixed",
                "%s before, %s after, a month"
                        .formatted(figures.rate(terms.fixedBeforeUsd()), figures.rate(terms.fixedAfterUsd())));
        add(kept, "estimate.savings.upkeep", figures.usd(terms.upkeepUsd()) + " in year 1");
        add(kept, "estimate.savings.upkeeprise", figures.percent(terms.upkeepEscalationPercent()) + " a year");
        for (Incentive line : terms.incentives()) {
            grounds.add(new Ground("estimate.savings.incentive", line.name(), figures.line(line), TYPED, null));
        }
    }

    private void years(SavingsRows.Kept kept, SavingsFigures figures) {
        SavingsTerms terms = kept.terms();
        add(kept, "estimate.savings.years", String.valueOf(terms.years()));
        String fading = figures.percent(terms.degradationPercent()) + " a year";
        String source = "published median: Jordan and Kurtz, Photovoltaic Degradation Rates";
        grounds.add(new Ground("estimate.savings.fading", null, fading, kept.isUsual() ? source : TYPED, null));
        add(kept, "estimate.savings.discount", figures.percent(terms.discountPercent()) + " a year");
        add(kept, "estimate.savings.confidence", figures.percent(terms.confidencePercent()) + " of cases");
        add(kept, "estimate.savings.apart", figures.percent(terms.apartPercent()) + " a year");
    }

    private void add(SavingsRows.Kept kept, String key, String value) {
        grounds.add(new Ground(key, null, value, kept.isUsual() ? USUAL : TYPED, null));
    }
}
