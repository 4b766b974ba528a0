package org.plumbrow.design.draft;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.survey.Surveys;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Begins a design with what survey and contract know, and fills parts of it as a designer does. */
@Service
@Transactional
public class DesignBeginning {

    private final Designs designs;
    private final DesignEditing editing;
    private final Surveys surveys;

    DesignBeginning(Designs designs, DesignEditing editing, Surveys surveys) {
        this.designs = designs;
        this.editing = editing;
        this.surveys = surveys;
    }

    public void begin(UUID projectId, @Nullable LocalDate wantedOn) {
        Designs.Draft draft = designs.draft(projectId);
        editing.begin(
                projectId,
                wantedOn,
                KnownAtFirst.of(draft.project(), surveys.factsUnchecked(projectId), draft.equipment()));
    }

    /** Writes these values into every row of a part, or into its one row; the other fields stay. */
    public Optional<Refusal> fill(UUID projectId, Part part, Map<String, String> values) {
        DesignRows.Kept kept = designs.draft(projectId).kept(part);
        List<Cells> rows = kept.rows().isEmpty() ? List.of(Cells.none()) : kept.rows();
        List<Cells> filled = rows.stream().map(row -> with(row, values)).toList();
        return editing.keep(projectId, part, kept.version(), filled);
    }

    private static Cells with(Cells row, Map<String, String> values) {
        Cells all = row;
        for (Map.Entry<String, String> value : values.entrySet()) {
            all = all.with(value.getKey(), value.getValue());
        }
        return all;
    }

    /** Keeps what is proposed for a part, as a designer does who finds nothing to change in it. */
    public Optional<Refusal> keepProposal(UUID projectId, Part part) {
        Designs.Draft draft = designs.draft(projectId);
        return editing.keep(
                projectId,
                part,
                draft.kept(part).version(),
                new Proposer(draft.facts(), surveys.factsUnchecked(projectId)).of(part));
    }
}
