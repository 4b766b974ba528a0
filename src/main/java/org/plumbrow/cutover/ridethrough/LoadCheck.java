package org.plumbrow.cutover.ridethrough;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.design.part.Cells;
import org.plumbrow.web.Refusal;

/** Tries what people wrote before it is kept: whatever is kept can be computed with. */
final class LoadCheck {

    private LoadCheck() {}

    static Optional<Refusal> refusal(LoadKind kind, List<Cells> rows) {
        return rows.stream().flatMap(row -> wrong(kind, row).stream()).findFirst();
    }

    private static Optional<Refusal> wrong(LoadKind kind, Cells row) {
        String name = row.isEmpty("mark") ? kind.title() : row.text("mark");
        try {
            tried(kind, row);
            return Optional.empty();
        } catch (IllegalArgumentException impossible) {
            return Optional.of(Refusal.ofForm(name + ": " + impossible.getMessage() + ". Look at its figures again."));
        }
    }

    private static void tried(LoadKind kind, Cells row) {
        switch (kind) {
            case HOUSES -> house(row);
            case TANK -> tank(row);
            case STORES -> StoreLoads.store(row);
            case GREENHOUSES -> greenhouse(row);
            case HOME -> StoreLoads.homeStands(row);
            case GENERATOR -> new GeneratorLoad(row, List.of()).on(LocalDate.EPOCH);
            case LOADS -> new GeneratorLoad(row, List.of(row)).farmLoads();
            case TIMES -> times(row);
        }
    }

    private static void house(Cells row) {
        HouseLoad house = new HouseLoad(row);
        house.closed();
        house.opened();
        if ((!row.isEmpty("heatLimitF") || !row.isEmpty("coldLimitF")) && row.isEmpty("limitSource")) {
            throw new IllegalArgumentException("a limit of your own needs somebody who says so");
        }
        house.limits();
    }

    private static void tank(Cells row) {
        StoreLoads.tank(row);
        if (row.isEmpty("from2") != row.isEmpty("to2")) {
            throw new IllegalArgumentException("write when the second milking begins and when it ends");
        }
        new SiteTimes(alone(LoadKind.TANK, row)).milk();
    }

    private static void greenhouse(Cells row) {
        StoreLoads.greenhouse(row);
        if (row.number("frostF", 0) >= row.number("heatF", 0)) {
            throw new IllegalArgumentException("the cold limit lies below the heat limit");
        }
    }

    private static void times(Cells row) {
        String lacking = lacking(row);
        if (!lacking.isEmpty()) {
            throw new IllegalArgumentException(lacking);
        }
        SiteTimes times = new SiteTimes(alone(LoadKind.TIMES, row));
        times.feedings();
        times.flockEvents();
        times.business();
        if (times.business().stream().anyMatch(one -> !one.from().isBefore(one.to()))) {
            throw new IllegalArgumentException("the end lies after the beginning");
        }
        times.present();
        times.closed();
    }

    private static String lacking(Cells row) {
        return switch (row.text("what")) {
            case "CLOSED" ->
                row.isEmpty("date") || row.isEmpty("lastDate")
                        ? "write the first and the last day of the vacation"
                        : "";
            case "FLOCK" ->
                row.isEmpty("date") || row.isEmpty("from")
                        ? "write the day of the catch or placement, and when it begins"
                        : "";
            default -> row.isEmpty("from") || row.isEmpty("to") ? "write when it begins and when it ends" : "";
        };
    }

    private static OnSite alone(LoadKind kind, Cells row) {
        return new OnSite(Map.of(kind, new OnSite.Kept(List.of(row), 0)));
    }
}
