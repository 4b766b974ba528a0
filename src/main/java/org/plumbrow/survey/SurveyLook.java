package org.plumbrow.survey;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateRule;
import org.springframework.stereotype.Component;

/** What the rules of the gate to surveyed look at, read once a look; while no survey is recorded, no rule can tell. */
@Component
class SurveyLook {

    private final SurveyRows rows;
    private final SurveyPhotos photos;
    private final SurveyRemarks remarks;

    SurveyLook(SurveyRows rows, SurveyPhotos photos, SurveyRemarks remarks) {
        this.rows = rows;
        this.photos = photos;
        this.remarks = remarks;
    }

    /** @param photos numbers of the items with a photo or a reason for none */
    record Seen(
            ProjectFacts project,
            SurveySheet sheet,
            SurveyFacts facts,
            Set<Integer> photos,
            List<Completeness.Lack> remarks) {

        boolean has(PhotoItem item) {
            return photos.contains(item.number());
        }

        /** Why a reading outside its limits stays; empty while nobody said so. */
        String explained(SurveyPart part, String field) {
            PartReadings read = sheet.readings(part);
            return read.has(field + PartTyping.TWICE) ? read.why(field) : "";
        }

        Completeness completeness() {
            return Completeness.of(project, sheet, new Completeness.Besides(photos, remarks));
        }
    }

    GateRule rule(String item, Function<Seen, Finding> judge) {
        return GateRule.of(item, look -> {
            Seen seen = look.once(Seen.class, this::read);
            return seen.facts.isRecorded()
                    ? judge.apply(seen)
                    : new Finding.CannotTell(
                            "No survey is recorded yet.", "The surveyor writes it on the survey page.");
        });
    }

    private Seen read(ProjectFacts project) {
        SurveySheet sheet = rows.of(project.id());
        if (sheet.version() == 0) {
            return new Seen(project, sheet, FactsReading.of(project.id(), sheet), Set.of(), List.of());
        }
        return new Seen(
                project,
                sheet,
                FactsReading.of(project.id(), sheet),
                photos.answered(project.id()),
                remarks.open(project.id()).stream()
                        .map(SurveyRemarks.Remark::lack)
                        .toList());
    }
}
