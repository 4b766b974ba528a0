package org.plumbrow.demo;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.survey.SurveyBook;
import org.plumbrow.survey.SurveyPhotos;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Surveys of some projects, part by part as on the pages; the others were surveyed on paper. One is half done. */
@Component
@WithDemo
class DemoSurveys implements DemoChapter {

    private static final String SURVEYOR = "Odo";
    private static final String DAY_ONE = "day-one";

    private final SurveyBook book;
    private final SurveyPhotos photos;
    private final Projects projects;
    private final Access access;
    private final Map<String, List<SeedRow>> parts;
    private final List<SeedRow> absent;

    DemoSurveys(SurveyBook book, SurveyPhotos photos, Projects projects, Access access) {
        this.book = book;
        this.photos = photos;
        this.projects = projects;
        this.access = access;
        this.parts = SeedRow.of("surveys.csv").stream().collect(Collectors.groupingBy(row -> row.text("key")));
        this.absent = SeedRow.of("survey-absent.csv");
    }

    /** The day before the gate was passed. */
    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.SURVEYED && parts.containsKey(told.key())) {
            as(cast, story, passed, told, () -> {
                write(told, passed);
                bringPhotos(told);
            });
        }
    }

    /** Of a project that is not surveyed yet: begun, without photos. */
    void begin(Told told, Cast cast, Story story) {
        if (!told.row().has("surveyed_days_ago") && parts.containsKey(told.key())) {
            LocalDate day = story.daysAgo(1);
            as(cast, story, day, told, () -> write(told, day));
        }
    }

    /** The horizon read again when the work began. */
    void dayOne(Told told, Cast cast, Story story) {
        LocalDate day = story.daysAgo(2);
        List<SeedRow> again = of(told).filter(DemoSurveys::isOfDayOne).toList();
        again.forEach(row -> as(cast, story, day, told, () -> book.fill(told.id(), DAY_ONE, readings(row))));
    }

    private Stream<SeedRow> of(Told told) {
        return parts.getOrDefault(told.key(), List.of()).stream();
    }

    private static boolean isOfDayOne(SeedRow row) {
        return row.text("part").equals(DAY_ONE);
    }

    private void as(Cast cast, Story story, LocalDate day, Told told, Runnable work) {
        StoryClock.at(
                story.during(day, 0),
                () -> access.as(cast.visitor(SURVEYOR), () -> {
                    work.run();
                    return told;
                }));
    }

    private void write(Told told, LocalDate day) {
        for (SeedRow row : of(told).filter(row -> !isOfDayOne(row)).toList()) {
            Map<String, String> readings = readings(row);
            if (row.text("part").equals("close")) {
                readings.put("surveyed_on", day.toString());
            }
            book.fill(told.id(), row.text("part"), readings);
        }
    }

    /** {@code v_AN=121.4; v_BN=120.9}: name and value. */
    private static Map<String, String> readings(SeedRow row) {
        Map<String, String> readings = new LinkedHashMap<>();
        for (String part : row.parts("readings", ";")) {
            int equals = part.indexOf('=');
            readings.put(part.substring(0, equals), part.substring(equals + 1));
        }
        return readings;
    }

    private void bringPhotos(Told told) {
        ProjectFacts project = projects.factsUnchecked(told.id());
        photos.asked(project).forEach((item, words) -> must(bring(told, item, words)));
    }

    private Optional<Refusal> bring(Told told, int item, String words) {
        UUID project = told.id();
        Optional<SeedRow> missing = absent.stream()
                .filter(row -> row.text("key").equals(told.key()) && row.whole("item") == item)
                .findFirst();
        return missing.isPresent()
                ? photos.absent(project, item, missing.get().text("reason"))
                : photos.add(
                        project,
                        item,
                        new Upload("survey-%02d.jpg".formatted(item), DemoPictures.photo("Survey " + item), words));
    }

    private static void must(Optional<Refusal> refused) {
        refused.ifPresent(no -> {
            throw new IllegalStateException("survey: " + no.sentence());
        });
    }
}
