package org.plumbrow.cutover.ridethrough;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.plumbrow.calc.ridethrough.Generator;
import org.plumbrow.calc.ridethrough.GeneratorCover;
import org.plumbrow.calc.ridethrough.GeneratorCover.FarmLoad;
import org.plumbrow.design.part.Cells;

/** The generator of a site with what it carries, from what people wrote. */
record GeneratorLoad(Cells cells, List<Cells> loads) {

    private static final double USUAL_GAL_PER_KWH = 0.08;
    private static final double USUAL_START = 3;
    private static final double USUAL_CHANGE_OVER_S = 10;
    private static final double USUAL_AIR_F = 77;

    /** Days on which it ran, or is to run, under the farm's load. */
    List<LocalDate> runs() {
        return Stream.of("lastRun", "nextRun")
                .map(cells::date)
                .filter(Objects::nonNull)
                .toList();
    }

    Generator on(LocalDate day) {
        OptionalInt since = runs().stream()
                .filter(run -> !run.isAfter(day))
                .mapToInt(run -> (int) ChronoUnit.DAYS.between(run, day))
                .min();
        return new Generator(
                cells.number("ratedKw", 0),
                Generator.Transfer.valueOf(cells.text("transfer")),
                cells.number("heightFt", 0) * UsUnits.M,
                UsUnits.degC(cells.number("airF", USUAL_AIR_F)),
                cells.number("fuelGal", 0),
                cells.number("galPerKwh", USUAL_GAL_PER_KWH),
                since,
                Generator.Rotation.valueOf(cells.text("rotation")),
                cells.number("changeOverS", USUAL_CHANGE_OVER_S));
    }

    GeneratorCover cover(LocalDate day, double outageMinutes) {
        return GeneratorCover.of(on(day), farmLoads(), outageMinutes);
    }

    List<FarmLoad> farmLoads() {
        return loads.stream()
                .flatMap(row -> Collections.nCopies(
                        row.whole("number", 1),
                        new FarmLoad(row.text("mark"), row.number("kw", 0), row.number("start", USUAL_START)))
                        .stream())
                .toList();
    }
}
