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
import org.plumbrow.design.draft.Designs;
import org.plumbrow.design.draft.Revisions;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Designs of some projects, drawn through the pages' own services and frozen once; the others were drawn on paper. */
@Component
@WithDemo
class DemoDesigns implements DemoChapter {

    private static final String DESIGNER = "Dov";
    private static final List<Part> PROPOSED = List.of(Part.STRINGS, Part.RUNS, Part.DEVICES, Part.LABELS);

    private final DesignBeginning beginning;
    private final Designs designs;
    private final Revisions revisions;
    private final Access access;
    private final Map<String, List<SeedRow>> parts;

    DemoDesigns(DesignBeginning beginning, Designs designs, Revisions revisions, Access access) {
        this.beginning = beginning;
        this.designs = designs;
        this.revisions = revisions;
        this.access = access;
        this.parts = SeedRow.of("designs.csv").stream().collect(Collectors.groupingBy(row -> row.text("key")));
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.DESIGNED && parts.containsKey(told.key())) {
            StoryClock.at(
                    story.during(passed, 0),
                    () -> access.as(cast.visitor(DESIGNER), () -> {
                        draw(told);
                        return told;
                    }));
        }
    }

    private void draw(Told told) {
        beginning.begin(told.id(), null);
        for (SeedRow row : parts.getOrDefault(told.key(), List.of())) {
            must(beginning.fill(told.id(), Part.valueOf(row.text("part")), values(row)));
        }
        PROPOSED.forEach(part -> must(beginning.keepProposal(told.id(), part)));
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
