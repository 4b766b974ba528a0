package org.plumbrow.cutover.ridethrough;

import java.util.List;
import org.plumbrow.calc.ridethrough.ColdStore;
import org.plumbrow.calc.ridethrough.Greenhouse;
import org.plumbrow.calc.ridethrough.HomeLoads;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.MilkTank;
import org.plumbrow.calc.ridethrough.RideThrough;
import org.plumbrow.design.part.Cells;

/** Tank, stores, greenhouses and a home, from what people wrote. */
final class StoreLoads {

    static final double FRESH_J_PER_KG_K = 3600;
    static final double FROZEN_J_PER_KG_K = 1900;
    /** A full tank gains 1 K in 24 h at 26 K of difference. */
    private static final double GAINS_K = 1;

    private static final double IN_HOURS = 24;
    private static final double AT_K = 26;
    private static final double SUN_THAT_WARMS = 0.5;

    private StoreLoads() {}

    static MilkTank tank(Cells cells) {
        return new MilkTank(
                cells.number("milkLb", 0) * UsUnits.KG,
                UsUnits.degC(cells.number("milkF", 0)),
                MilkTank.uaOf(cells.number("fullLb", 0) * UsUnits.KG, GAINS_K, IN_HOURS, AT_K));
    }

    static RideThrough tankStands(Cells cells) {
        return tank(cells).rideThrough(UsUnits.degC(cells.number("roomF", 0)));
    }

    static ColdStore store(Cells cells) {
        return new ColdStore(
                cells.number("productLb", 0) * UsUnits.KG,
                cells.text("product").equals("FROZEN") ? FROZEN_J_PER_KG_K : FRESH_J_PER_KG_K,
                cells.number("airFt3", 0) * UsUnits.M3,
                cells.number("surfaceFt2", 0) * UsUnits.M2,
                UsUnits.uOfR(cells.number("wallR", 1)),
                cells.number("respiration", 0));
    }

    static RideThrough storeStands(Cells cells, HourOutside outside) {
        Limit limit = new Limit(Limit.Kind.PRODUCT, UsUnits.degC(cells.number("limitF", 0)), cells.text("limitSource"));
        return named(cells, store(cells).rideThrough(UsUnits.degC(cells.number("insideF", 0)), outside.warmC(), limit));
    }

    static Greenhouse greenhouse(Cells cells) {
        return new Greenhouse(
                cells.number("coverFt2", 0) * UsUnits.M2,
                cells.number("cover", 6.65),
                cells.number("volumeFt3", 0) * UsUnits.M3,
                cells.number("ach", 1),
                cells.number("waterGal", 0) * UsUnits.WATER_KG_PER_GAL,
                cells.number("floorFt2", 0) * UsUnits.M2,
                SUN_THAT_WARMS);
    }

    static RideThrough greenhouseStands(Cells cells, HourOutside outside) {
        Greenhouse house = greenhouse(cells);
        double insideC = UsUnits.degC(cells.number("insideF", 0));
        String source = cells.text("limitSource");
        List<Limit> limits = List.of(
                new Limit(Limit.Kind.HEAT, UsUnits.degC(cells.number("heatF", 0)), source),
                new Limit(Limit.Kind.FROST, UsUnits.degC(cells.number("frostF", 0)), source));
        return named(
                cells,
                HouseLoad.shorter(
                        house.rideThrough(insideC, outside.warmC(), outside.sunWPerM2(), limits),
                        house.rideThrough(insideC, outside.coldC(), 0, limits)));
    }

    static RideThrough homeStands(Cells cells) {
        HomeLoads.Freezer freezer = cells.choice("freezer", HomeLoads.Freezer.class);
        return new HomeLoads(
                        cells.yes("medical"),
                        cells.yes("refrigerator"),
                        freezer == null ? HomeLoads.Freezer.NONE : freezer)
                .rideThrough();
    }

    private static RideThrough named(Cells cells, RideThrough answer) {
        return new RideThrough(cells.text("mark"), answer.horizonMinutes(), answer.times(), answer.cautions());
    }
}
