package org.plumbrow.estimate;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.CellHeating;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.calc.energy.Horizon;
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

    /** How the wind cools what is mounted so. */
    public static CellHeating heating(Mounting mounting) {
        return mounting == Mounting.GROUND
                ? CellHeating.Faiman.OPEN_RACK
                : CellHeating.TwoConstants.ROOF_WITH_AIR_BEHIND;
    }

    public EnergyYield energyYield() {
        return EnergyYield.of(site, groups, losses);
    }

    /** The same system with something else around it, whatever horizon the estimate itself has; empty for nothing. */
    public EnergyYield yieldUnder(Optional<Horizon> around) {
        return EnergyYield.of(
                site, groups.stream().map(group -> under(group, around)).toList(), losses);
    }

    private static InverterGroup under(InverterGroup group, Optional<Horizon> around) {
        return new InverterGroup(
                group.name(),
                group.inverter(),
                group.sections().stream().map(section -> under(section, around)).toList());
    }

    private static ArraySection under(ArraySection section, Optional<Horizon> around) {
        return new ArraySection(
                section.name(),
                section.kwDc(),
                section.plane(),
                section.module(),
                section.heating(),
                section.rows(),
                around);
    }
}
