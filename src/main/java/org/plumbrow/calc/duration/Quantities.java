package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.QuantityKind.AC_GEAR_SETS;
import static org.plumbrow.calc.duration.QuantityKind.BORE_FT;
import static org.plumbrow.calc.duration.QuantityKind.CONDUCTOR_RUN_FT;
import static org.plumbrow.calc.duration.QuantityKind.FENCE_FT;
import static org.plumbrow.calc.duration.QuantityKind.INVERTERS;
import static org.plumbrow.calc.duration.QuantityKind.MICROINVERTERS;
import static org.plumbrow.calc.duration.QuantityKind.MODULES;
import static org.plumbrow.calc.duration.QuantityKind.POSTS;
import static org.plumbrow.calc.duration.QuantityKind.RESEED_ACRES;
import static org.plumbrow.calc.duration.QuantityKind.ROCK_FT;
import static org.plumbrow.calc.duration.QuantityKind.STRINGS;
import static org.plumbrow.calc.duration.QuantityKind.TERMINATIONS;
import static org.plumbrow.calc.duration.QuantityKind.TRENCH_FT;

import java.util.function.Supplier;

/**
 * The quantities of a project: those that are known, and for the others an estimate whose rule is named. All rules are
 * common practice without a source; they stand until the design gives a count.
 */
public final class Quantities {

    private static final double HOME_MODULE_W = 400;
    private static final double LARGE_MODULE_W = 550;
    private static final int MODULES_PER_POST = 3;
    private static final int MODULES_PER_SHORT_STRING = 12;
    private static final int MODULES_PER_LONG_STRING = 18;
    private static final double KW_PER_INVERTER = 50;
    private static final double KW_PER_ACRE = 200;

    private final ProjectWork work;

    public Quantities(ProjectWork work) {
        this.work = work;
    }

    public Quantity modules(ArrayWork array) {
        double moduleW = work.home() ? HOME_MODULE_W : LARGE_MODULE_W;
        return ofArray(
                array,
                MODULES,
                () -> Quantity.estimated(
                        MODULES, Math.ceil(array.kwDc() * 1000 / moduleW), "modules of %.0f W".formatted(moduleW)));
    }

    public Quantity posts(ArrayWork array) {
        return ofArray(
                array,
                POSTS,
                () -> Quantity.estimated(
                        POSTS,
                        Math.ceil(modules(array).amount() / MODULES_PER_POST),
                        "one post for every %d modules".formatted(MODULES_PER_POST)));
    }

    public Quantity strings(ArrayWork array) {
        boolean shortStrings = work.home() || array.mounting() == Mounting.PITCHED_ROOF;
        int modulesPerString = shortStrings ? MODULES_PER_SHORT_STRING : MODULES_PER_LONG_STRING;
        return ofArray(
                array,
                STRINGS,
                () -> Quantity.estimated(
                        STRINGS,
                        Math.ceil(modules(array).amount() / modulesPerString),
                        "%d modules in a string or branch circuit".formatted(modulesPerString)));
    }

    private static Quantity ofArray(ArrayWork array, QuantityKind kind, Supplier<Quantity> rule) {
        Double known = array.known().get(kind);
        return known == null ? rule.get() : Quantity.given(kind, known);
    }

    public Quantity allStrings() {
        double all = work.arrays().stream()
                .mapToDouble(array -> strings(array).amount())
                .sum();
        boolean estimated =
                work.arrays().stream().anyMatch(array -> strings(array).estimated());
        return new Quantity(STRINGS, all, estimated, estimated ? "sum of the arrays, some estimated" : "given");
    }

    /** Of the whole job; modules, posts and strings are asked of their array. */
    public Quantity of(QuantityKind kind) {
        Double known = work.known().get(kind);
        return known == null ? estimate(kind) : Quantity.given(kind, known);
    }

    private Quantity estimate(QuantityKind kind) {
        return switch (kind) {
            case INVERTERS -> inverters();
            case MICROINVERTERS -> microinverters();
            case TRENCH_FT -> trench();
            case CONDUCTOR_RUN_FT -> conductorRun();
            case AC_GEAR_SETS -> Quantity.estimated(AC_GEAR_SETS, 1, "one set of AC gear");
            case TERMINATIONS -> terminations();
            case RESEED_ACRES ->
                Quantity.estimated(
                        RESEED_ACRES,
                        work.onGround() ? work.kwDc() / KW_PER_ACRE : 0,
                        "an acre for every %.0f kW DC on the ground".formatted(KW_PER_ACRE));
            case BORE_FT, ROCK_FT, FENCE_FT -> Quantity.estimated(kind, 0, "none unless the survey says so");
            case MODULES, POSTS, STRINGS -> throw new IllegalArgumentException(kind + " belong to an array");
        };
    }

    private Quantity inverters() {
        if (work.inverterKind() == InverterKind.MICROINVERTERS) {
            return Quantity.estimated(INVERTERS, 0, "microinverters instead");
        }
        return Quantity.estimated(
                INVERTERS,
                Math.ceil(work.kwDc() / KW_PER_INVERTER),
                "one string inverter for every %.0f kW DC".formatted(KW_PER_INVERTER));
    }

    private Quantity microinverters() {
        double modules = work.arrays().stream()
                .mapToDouble(array -> modules(array).amount())
                .sum();
        return work.inverterKind() == InverterKind.MICROINVERTERS
                ? Quantity.estimated(MICROINVERTERS, modules, "one at each module")
                : Quantity.estimated(MICROINVERTERS, 0, "string inverters instead");
    }

    private Quantity trench() {
        double ft = !work.onGround() ? 0 : work.home() ? 100 : 300;
        return Quantity.estimated(
                TRENCH_FT,
                ft,
                "%.0f ft of trench %s".formatted(ft, work.onGround() ? "to a ground mount" : "to a roof"));
    }

    private Quantity conductorRun() {
        double dug = of(TRENCH_FT).amount() + of(BORE_FT).amount() + of(ROCK_FT).amount();
        if (dug > 0) {
            return Quantity.estimated(CONDUCTOR_RUN_FT, dug, "as long as trench and bore");
        }
        double ft = work.home() ? 50 : 150;
        return Quantity.estimated(CONDUCTOR_RUN_FT, ft, "%.0f ft on a building".formatted(ft));
    }

    private Quantity terminations() {
        int perSet = work.home() ? 12 : 24;
        double all = 4 * allStrings().amount()
                + 8 * of(INVERTERS).amount()
                + perSet * of(AC_GEAR_SETS).amount();
        return Quantity.estimated(
                TERMINATIONS, all, "4 a string, 8 a string inverter, %d a set of AC gear".formatted(perSet));
    }
}
