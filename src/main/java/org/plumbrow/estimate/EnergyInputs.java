package org.plumbrow.estimate;

import java.util.List;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.calc.energy.InverterGroup;
import org.plumbrow.calc.energy.Losses;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.calc.energy.YearSpread;

/**
 * What a project's yield is computed from.
 *
 * @param site weather and sun, prepared once and shared
 * @param groups inverters with their arrays, horizon and rows applied where they are known
 */
public record EnergyInputs(
        EstimateFacts.Weather weather,
        SiteYear site,
        List<InverterGroup> groups,
        Losses losses,
        YearSpread spread,
        boolean horizonApplied) {

    public EnergyInputs {
        groups = List.copyOf(groups);
    }

    public EnergyYield energyYield() {
        return EnergyYield.of(site, groups, losses);
    }
}
