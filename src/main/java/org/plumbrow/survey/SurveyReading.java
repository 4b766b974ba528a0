package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.survey.SurveyRemarks.Remark;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the pages of a survey show, for the person who asks. */
@Service
@Transactional(readOnly = true)
class SurveyReading {

    private final Projects projects;
    private final ProjectTitles titles;
    private final SurveyRows rows;
    private final SurveyPhotos photos;
    private final SurveyRemarks remarks;

    SurveyReading(
            Projects projects, ProjectTitles titles, SurveyRows rows, SurveyPhotos photos, SurveyRemarks remarks) {
        this.projects = projects;
        this.titles = titles;
        this.rows = rows;
        this.photos = photos;
        this.remarks = remarks;
    }

    /**
     * Where a part stands.
     *
     * @param shape of the status: todo, part, done, na
     * @param lacks things that are missing in it
     */
    record PartState(String path, String words, String shape, int lacks, boolean begun) {}

    record Overview(
            ProjectTitle title,
            SurveySheet sheet,
            Completeness completeness,
            List<PartState> parts,
            List<Remark> remarks) {
        public List<String> voltageRemarks() {
            return Asks.remarks(sheet.readings(SurveyPart.SERVICE));
        }
    }

    Overview overview(UUID projectId) {
        ProjectFacts project = projects.facts(projectId);
        SurveySheet sheet = rows.of(projectId);
        List<Remark> open = remarks.open(projectId);
        var besides = new Completeness.Besides(
                photos.answered(projectId), open.stream().map(Remark::lack).toList());
        Completeness completeness = Completeness.of(project, sheet, besides);
        return new Overview(
                titles.of(project), sheet, completeness, states(project, sheet, completeness, besides), open);
    }

    private static List<PartState> states(
            ProjectFacts project, SurveySheet sheet, Completeness completeness, Completeness.Besides besides) {
        List<PartState> states = new ArrayList<>();
        for (SurveyPart part : SurveyPart.values()) {
            if (part == SurveyPart.DAY_ONE) {
                states.add(photoState(project, besides));
            }
            states.add(state(part, project, sheet, completeness));
        }
        return states;
    }

    private static PartState state(
            SurveyPart part, ProjectFacts project, SurveySheet sheet, Completeness completeness) {
        int lacks = completeness.of(part).size();
        boolean begun = !sheet.readings(part).isEmpty();
        if (!begun && !Needs.asksFor(part, project)) {
            return new PartState(part.path(), part.words(), part == SurveyPart.DAY_ONE ? "todo" : "na", lacks, false);
        }
        String open = begun ? "part" : "todo";
        return new PartState(part.path(), part.words(), lacks == 0 && begun ? "done" : open, lacks, begun);
    }

    private static PartState photoState(ProjectFacts project, Completeness.Besides besides) {
        int missing = Completeness.missingPhotos(project, besides.photos()).size();
        boolean begun = !besides.photos().isEmpty();
        return new PartState("photos", "Photos", missing == 0 ? "done" : begun ? "part" : "todo", missing, begun);
    }

    record Part(ProjectTitle title, SurveySheet sheet, SurveyPart part, List<PartState> parts, List<Remark> remarks) {
        public PartReadings readings() {
            return sheet.readings(part);
        }

        long version() {
            return sheet.version(part);
        }
    }

    Part part(UUID projectId, SurveyPart part) {
        Overview overview = overview(projectId);
        return new Part(
                overview.title,
                overview.sheet,
                part,
                overview.parts,
                overview.remarks.stream().filter(one -> one.part() == part).toList());
    }

    /** One item of the photo list. */
    record PhotoLine(PhotoItem item, SurveyPhotos.Kept kept) {}

    record PhotoList(ProjectTitle title, List<PartState> parts, List<PhotoLine> lines) {
        public long missing() {
            return lines.stream().filter(line -> !line.kept.isAnswered()).count();
        }
    }

    PhotoList photoList(UUID projectId) {
        Overview overview = overview(projectId);
        ProjectFacts project = projects.facts(projectId);
        Map<Integer, SurveyPhotos.Kept> kept = photos.of(projectId);
        List<PhotoLine> lines = Arrays.stream(PhotoItem.values())
                .filter(item -> item.isNeeded(project) || kept.containsKey(item.number()))
                .map(item -> new PhotoLine(item, kept.getOrDefault(item.number(), SurveyPhotos.Kept.NOTHING)))
                .toList();
        return new PhotoList(overview.title, overview.parts, lines);
    }
}
