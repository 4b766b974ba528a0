package org.plumbrow.schedule.activity;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.ArrayWork;
import org.plumbrow.calc.duration.Foundation;
import org.plumbrow.calc.duration.InverterKind;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.duration.ProjectWork;
import org.plumbrow.calc.duration.QuantityKind;
import org.plumbrow.calc.duration.WaitChoices;
import org.plumbrow.design.DrawnQuantities;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFacts.ArrayFacts;
import org.plumbrow.project.SiteLoad;

/** What the contract says of a job, as the computation of durations wants it; {@link DrawnWork} once a design is frozen. */
final class JobWork {

    /** kW DC for each kW AC where the contract names only one (common practice, no source). */
    static final double DC_PER_AC = 1.2;

    /** A pitched roof up to this size with nothing known of the site is taken for a home's (common practice, no source). */
    private static final double HOME_KW_DC = 20;

    private final ProjectFacts facts;
    private final ProjectFacts.Contract contract;

    private JobWork(ProjectFacts facts) {
        this.facts = facts;
        contract = facts.contract();
    }

    /**
     * Empty as long as nobody has named an array: without its mounting nobody knows what there is to do.
     *
     * @param drawn of the newest frozen design, which goes before the contract; null without one
     */
    static Optional<ProjectWork> of(ProjectFacts facts, @Nullable DrawnQuantities drawn) {
        if (drawn != null && !drawn.arrays().isEmpty()) {
            return Optional.of(new DrawnWork(facts, drawn).work());
        }
        JobWork job = new JobWork(facts);
        return job.contract.arrays().isEmpty() || job.kwDc() <= 0 ? Optional.empty() : Optional.of(job.work());
    }

    private ProjectWork work() {
        List<ArrayWork> arrays = contract.arrays().stream().map(this::array).toList();
        boolean onGround = arrays.stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
        Map<QuantityKind, Double> known = new EnumMap<>(QuantityKind.class);
        InverterKind inverters = inverterKind();
        if (inverters == InverterKind.STRING_INVERTERS) {
            put(known, QuantityKind.INVERTERS, contract.inverters());
        }
        put(known, QuantityKind.TRENCH_FT, contract.trenchFt());
        put(known, QuantityKind.BORE_FT, contract.boreFt());
        return new ProjectWork(isHome(), arrays, inverters, known, WaitChoices.usual(isHome(), kwAc(), onGround));
    }

    private ArrayWork array(ArrayFacts array) {
        Map<QuantityKind, Double> known = new EnumMap<>(QuantityKind.class);
        put(known, QuantityKind.MODULES, array.modules());
        if (contract.arrays().size() == 1) {
            put(known, QuantityKind.POSTS, contract.posts());
            put(known, QuantityKind.STRINGS, contract.strings());
        }
        return new ArrayWork(array.mounting(), Foundation.DRIVEN_POSTS, kwDcOf(array), known);
    }

    private double kwDcOf(ArrayFacts array) {
        double own = moduleKw(array);
        return withinLimits(own > 0 ? own : kwDc() / contract.arrays().size());
    }

    static double withinLimits(double kwDc) {
        return Math.min(ArrayWork.SIZE.most(), Math.max(ArrayWork.SIZE.least(), kwDc));
    }

    private static double moduleKw(ArrayFacts array) {
        return array.modules() == null || array.moduleW() == null
                ? 0
                : array.modules() * array.moduleW().doubleValue() / 1000;
    }

    private double kwDc() {
        double ofModules =
                contract.arrays().stream().mapToDouble(JobWork::moduleKw).sum();
        double given = value(contract.systemKwDc());
        return given > 0 ? given : ofModules > 0 ? ofModules : value(contract.systemKwAc()) * DC_PER_AC;
    }

    private double kwAc() {
        double given = value(contract.systemKwAc());
        return given > 0 ? given : kwDc() / DC_PER_AC;
    }

    private static double value(@Nullable BigDecimal amount) {
        return amount == null ? 0 : amount.doubleValue();
    }

    private boolean isHome() {
        return isHome(facts, kwDc(), contract.arrays().stream().map(ArrayFacts::mounting));
    }

    static boolean isHome(ProjectFacts facts, double kwDc, Stream<Mounting> mountings) {
        Set<SiteLoad> loads = facts.site().loads();
        return loads.isEmpty()
                ? kwDc <= HOME_KW_DC && mountings.allMatch(mounting -> mounting == Mounting.PITCHED_ROOF)
                : loads.equals(Set.of(SiteLoad.HOME));
    }

    private InverterKind inverterKind() {
        return contract.inverters() == null || contract.modules() == 0
                ? InverterKind.STRING_INVERTERS
                : InverterKind.from(contract.inverters(), contract.modules());
    }

    static void put(Map<QuantityKind, Double> known, QuantityKind kind, @Nullable Number amount) {
        if (amount != null) {
            known.put(kind, Math.min(amount.doubleValue(), kind.range().most()));
        }
    }
}
