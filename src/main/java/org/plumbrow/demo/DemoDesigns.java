package org.plumbrow.demo;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.design.draft.DesignBeginning;
import org.plumbrow.design.draft.DesignEditing;
import org.plumbrow.design.draft.Designs;
import org.plumbrow.design.draft.Revisions;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/**
 * Designs of some projects, drawn through the pages' own services: frozen once where the story goes on to the design, else a
 * draft begun after the survey. The others were drawn on paper.
 */
@Component
@WithDemo
class DemoDesigns implements DemoChapter {

    private static final String DESIGNER = "Dov";
    private static final List<Part> PROPOSED = List.of(Part.STRINGS, Part.RUNS, Part.DEVICES, Part.LABELS);

    private final DesignBeginning beginning;
    private final DesignEditing editing;
    private final Designs designs;
    private final Revisions revisions;
    private final Access access;
    private final Map<String, List<SeedRow>> parts;

    DemoDesigns(DesignBeginning beginning, DesignEditing editing, Designs designs, Revisions revisions, Access access) {
        this.beginning = beginning;
        this.editing = editing;
        this.designs = designs;
        this.revisions = revisions;
        this.access = access;
        this.parts = SeedRow.of("designs.csv").stream().collect(Collectors.groupingBy(row -> row.text("key")));
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        boolean draft = told.row().maybe("designed_days_ago").isEmpty();
        if (stage == (draft ? Stage.SURVEYED : Stage.DESIGNED) && parts.containsKey(told.key())) {
            StoryClock.at(
                    story.during(passed, 0),
                    () -> access.as(cast.visitor(DESIGNER), () -> {
                        draw(told);
                        if (!draft) {
                            freeze(told);
                        }
                        return told;
                    }));
        }
    }

    private void draw(Told told) {
        beginning.begin(told.id(), null);
        for (SeedRow row : parts.getOrDefault(told.key(), List.of())) {
            Part part = Part.valueOf(row.text("part"));
            if (part != Part.PLAN) {
                must(beginning.fill(told.id(), part, values(row)));
            }
        }
        PROPOSED.forEach(part -> must(beginning.keepProposal(told.id(), part)));
        List<Cells> plan = plan(told);
        if (!plan.isEmpty()) {
            must(editing.keep(told.id(), Part.PLAN, -1, plan));
        }
    }

    /** Each row is a thing of its own; its points stand apart by slashes. */
    private List<Cells> plan(Told told) {
        return parts.getOrDefault(told.key(), List.of()).stream()
                .filter(row -> row.text("part").equals(Part.PLAN.name()))
                .map(DemoDesigns::values)
                .map(values ->
                        new Cells(values).with("points", values.get("points").replace(" / ", "; ")))
                .toList();
    }

    private void freeze(Told told) {
        long seen = designs.draft(told.id()).facts().version();
        must(revisions.freeze(told.id(), seen, "First issue."));
    }

    private static Map<String, String> values(SeedRow row) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String value : row.parts("values", ";")) {
            int equals = value.indexOf('=');
            values.put(
                    value.substring(0, equals).strip(),
                    value.substring(equals + 1).strip());
        }
        return values;
    }

    private static void must(Optional<Refusal> refused) {
        refused.ifPresent(no -> {
            throw new IllegalStateException("design: " + no.sentence());
        });
    }
}
