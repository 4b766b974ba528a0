package org.plumbrow.schedule.activity;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

/** What the newest frozen design says of a job. What it is silent about the contract may have said. */
final class DrawnWork {

    private final ProjectFacts facts;
    private final DrawnQuantities drawn;

    DrawnWork(ProjectFacts facts, DrawnQuantities drawn) {
        this.facts = facts;
        this.drawn = drawn;
    }

    ProjectWork work() {
        boolean home =
                JobWork.isHome(facts, drawn.kwDc(), drawn.arrays().stream().map(DrawnQuantities.OfArray::mounting));
        boolean onGround = drawn.arrays().stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
        InverterKind inverters = InverterKind.from(drawn.inverters(), drawn.modules());
        List<ArrayWork> arrays = drawn.arrays().stream().map(this::array).toList();
        double kwAc = drawn.kwAc() > 0 ? drawn.kwAc() : drawn.kwDc() / JobWork.DC_PER_AC;
        return new ProjectWork(home, arrays, inverters, known(inverters), WaitChoices.usual(home, kwAc, onGround));
    }

    private Map<QuantityKind, Double> known(InverterKind inverters) {
        Map<QuantityKind, Double> known = new EnumMap<>(QuantityKind.class);
        if (inverters == InverterKind.STRING_INVERTERS && drawn.inverters() > 0) {
            JobWork.put(known, QuantityKind.INVERTERS, drawn.inverters());
        }
        ProjectFacts.Contract contract = facts.contract();
        JobWork.put(known, QuantityKind.TRENCH_FT, either(drawn.trenchFt(), contract.trenchFt()));
        JobWork.put(known, QuantityKind.BORE_FT, either(drawn.boreFt(), contract.boreFt()));
        return known;
    }

    private ArrayWork array(DrawnQuantities.OfArray array) {
        Map<QuantityKind, Double> known = new EnumMap<>(QuantityKind.class);
        JobWork.put(known, QuantityKind.MODULES, array.modules());
        JobWork.put(known, QuantityKind.STRINGS, array.strings() > 0 ? array.strings() : null);
        boolean alone = drawn.arrays().size() == 1;
        JobWork.put(
                known,
                QuantityKind.POSTS,
                either(array.posts(), alone ? facts.contract().posts() : null));
        return new ArrayWork(array.mounting(), Foundation.DRIVEN_POSTS, JobWork.withinLimits(array.kwDc()), known);
    }

    private static @Nullable Number either(@Nullable Number first, @Nullable Number second) {
        return first == null ? second : first;
    }
}
