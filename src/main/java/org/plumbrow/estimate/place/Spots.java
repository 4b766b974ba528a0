package org.plumbrow.estimate.place;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.calc.energy.Inverter;
import org.plumbrow.calc.energy.InverterGroup;
import org.plumbrow.calc.energy.ModuleFit;
import org.plumbrow.calc.energy.Plane;
import org.plumbrow.calc.energy.RowSpacing;
import org.plumbrow.calc.energy.Rows;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.survey.SurveyFacts.Ground;
import org.plumbrow.survey.SurveyFacts.RoofPlane;

/**
 * What roof and ground hold and give, from what the survey measured: rules of thumb for the size, the estimate's own
 * weather, modules, losses and horizon for the yield.
 */
final class Spots {

    static final double ROOF_EDGE_FT = 3;
    static final double FLAT_EDGE_FT = 4;
    static final double FIELD_EDGE_FT = 10;
    static final double FLAT_TO_DEG = 5;
    static final double FREE_HOURS = 6;
    static final double USUAL_MODULE_W = 550;

    private static final double M_PER_FT = 0.3048;
    private static final double M2_PER_ACRE = 4046.8564224;
    private static final double TRIED_KW = 10;
    private static final Plane USUAL_FLAT = new Plane(10, 180);
    private static final Plane USUAL_GROUND = new Plane(30, 180);
    private static final ModuleFit.Table FLAT_ROW = new ModuleFit.Table(1, false);
    private static final ModuleFit.Table GROUND_ROW = new ModuleFit.Table(2, true);

    private final ProjectFacts.Contract contract;
    private final @Nullable EnergyInputs inputs;
    private final @Nullable Place place;

    Spots(ProjectFacts project, @Nullable EnergyInputs inputs) {
        this.contract = project.contract();
        this.inputs = inputs;
        this.place = SitePlace.of(project, inputs);
    }

    double moduleW() {
        return contract.arrays().stream()
                .filter(array -> array.moduleW() != null)
                .mapToDouble(array -> array.moduleW().doubleValue())
                .filter(ModuleFit.MODULE_W::holds)
                .findFirst()
                .orElse(USUAL_MODULE_W);
    }

    static boolean isMeasured(RoofPlane plane) {
        return plane.pitchDeg() != null
                && plane.azimuthDeg() != null
                && plane.widthFt() != null
                && plane.lengthFt() != null;
    }

    List<Spot> roof(List<RoofPlane> planes) {
        return planes.stream()
                .filter(Spots::isMeasured)
                .flatMap(plane -> onRoof(plane).stream())
                .toList();
    }

    private Optional<Spot> onRoof(RoofPlane plane) {
        double pitch = given(plane.pitchDeg());
        if (pitch <= FLAT_TO_DEG) {
            double across = metres(plane.widthFt(), 2 * FLAT_EDGE_FT);
            double deep = metres(plane.lengthFt(), 2 * FLAT_EDGE_FT);
            return inRows(plane.name(), across, deep, Mounting.FLAT_ROOF, FLAT_ROW);
        }
        ModuleFit fit = ModuleFit.flush(
                metres(plane.widthFt(), 2 * ROOF_EDGE_FT), metres(plane.lengthFt(), ROOF_EDGE_FT), moduleW());
        Plane facing = new Plane(pitch, given(plane.azimuthDeg()));
        return Optional.of(spot(plane.name(), fit, facing, Mounting.PITCHED_ROOF, Optional.empty(), 0));
    }

    /** @return empty while the field was not measured, or where rows cannot be told */
    Optional<Spot> ground(Ground ground) {
        if (ground.fieldLengthFt() == null || ground.fieldWidthFt() == null) {
            return Optional.empty();
        }
        double across = metres(ground.fieldLengthFt(), 2 * FIELD_EDGE_FT);
        double deep = metres(ground.fieldWidthFt(), 2 * FIELD_EDGE_FT);
        return inRows("Field", across, deep, Mounting.GROUND, GROUND_ROW);
    }

    private Optional<Spot> inRows(String name, double across, double deep, Mounting mounting, ModuleFit.Table table) {
        if (place == null) {
            return Optional.empty();
        }
        Plane plane = facing(mounting);
        double width = table.widthM(moduleW());
        try {
            RowSpacing spacing = RowSpacing.free(place, plane, width, FREE_HOURS);
            double pitch = Math.min(Rows.PITCH.most(), spacing.pitchM());
            ModuleFit fit = ModuleFit.rows(across, deep, moduleW(), table, plane, pitch);
            double acres =
                    mounting == Mounting.GROUND ? spacing.landM2PerKw(width, ModuleFit.W_PER_M2) / M2_PER_ACRE : 0;
            return Optional.of(spot(name, fit, plane, mounting, Optional.of(new Rows(width, pitch)), acres));
        } catch (IllegalArgumentException tooLow) {
            return Optional.empty();
        }
    }

    /** As the contract has its array there, else the usual. */
    private Plane facing(Mounting mounting) {
        return contract.arrays().stream()
                .filter(array -> array.mounting() == mounting && array.tiltDeg() != null && array.azimuthDeg() != null)
                .findFirst()
                .map(array -> new Plane(
                        array.tiltDeg().doubleValue(), array.azimuthDeg().doubleValue()))
                .orElse(mounting == Mounting.GROUND ? USUAL_GROUND : USUAL_FLAT);
    }

    private Spot spot(String name, ModuleFit fit, Plane plane, Mounting mounting, Optional<Rows> rows, double acres) {
        double kwDc = fit.modules() * moduleW() / 1000;
        EnergyInputs known = inputs;
        if (known == null) {
            return new Spot(name, plane, fit.modules(), kwDc, null, null, acres);
        }
        ArraySection like = known.groups().get(0).sections().get(0);
        ArraySection open = new ArraySection(
                name, TRIED_KW, plane, like.module(), EnergyInputs.heating(mounting), rows, Optional.empty());
        double without = kwhPerKw(known, open);
        Double with =
                like.horizon().map(around -> kwhPerKw(known, open.with(around))).orElse(null);
        Double shade = with == null ? null : 100 * (1 - with / without);
        return new Spot(name, plane, fit.modules(), kwDc, with == null ? (Double) without : with, shade, acres);
    }

    /** With as much inverter for each kW as the estimate has; so a size of its own does not matter. */
    private static double kwhPerKw(EnergyInputs inputs, ArraySection section) {
        double dc = inputs.groups().stream().mapToDouble(InverterGroup::kwDc).sum();
        double ac = inputs.groups().stream()
                .mapToDouble(group -> group.inverter().acKw())
                .sum();
        double kwAc = Math.min(Inverter.AC_KW.most(), Math.max(Inverter.AC_KW.least(), section.kwDc() * ac / dc));
        double efficiency = inputs.groups().get(0).inverter().efficiency();
        InverterGroup group = new InverterGroup(section.name(), new Inverter(kwAc, efficiency), List.of(section));
        return EnergyYield.of(inputs.site(), List.of(group), inputs.losses()).kwhPerKw();
    }

    /** Less what is kept free, within what can be counted. */
    private static double metres(@Nullable Double feet, double freeFt) {
        return Math.min(ModuleFit.SIDE_M.most(), Math.max(0, (given(feet) - freeFt) * M_PER_FT));
    }

    private static double given(@Nullable Double figure) {
        return java.util.Objects.requireNonNull(figure);
    }
}
