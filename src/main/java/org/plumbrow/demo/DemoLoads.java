package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.plumbrow.cutover.ridethrough.LoadKind;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.design.part.Cells;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What on some sites suffers without power, written down by the project manager once the survey was there. */
@Component
@WithDemo
class DemoLoads implements DemoChapter {

    private static final LocalTime AT_TEN = LocalTime.of(10, 0);
    private static final String DAY = "@";

    private final SiteLoads loads;
    private final Access access;
    private final List<SeedRow> rows;

    DemoLoads(SiteLoads loads, Access access) {
        this.loads = loads;
        this.access = access;
        this.rows = SeedRow.of("site-loads.csv");
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate day) {
        if (stage == Stage.SURVEYED) {
            Map<LoadKind, List<Cells>> kinds = rows.stream()
                    .filter(row -> row.text("key").equals(told.key()))
                    .collect(Collectors.groupingBy(
                            row -> LoadKind.valueOf(row.text("kind")),
                            LinkedHashMap::new,
                            Collectors.mapping(row -> cells(row, story), Collectors.toList())));
            kinds.forEach((kind, written) -> write(told, cast, story.at(day, AT_TEN), kind, written));
        }
    }

    private void write(Told told, Cast cast, java.time.Instant at, LoadKind kind, List<Cells> written) {
        StoryClock.at(
                at,
                () -> access.as(
                        cast.visitor(told.row().text("project_manager")),
                        () -> loads.keep(told.id(), kind, -1, written).map(no -> {
                            throw new IllegalStateException(told.key() + ": " + no.sentence());
                        })));
    }

    private static Cells cells(SeedRow row, Story story) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String part : row.parts("cells", ";")) {
            String[] pair = part.split("=", 2);
            cells.put(
                    pair[0],
                    pair[1].startsWith(DAY)
                            ? story.inDays(Integer.parseInt(pair[1].substring(1)))
                                    .toString()
                            : pair[1]);
        }
        return new Cells(cells);
    }
}
