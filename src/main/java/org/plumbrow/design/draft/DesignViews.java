package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.design.equipment.Entry;
import org.plumbrow.design.equipment.EquipmentKind;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.Part;
import org.plumbrow.design.part.PartForm;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.Surveys;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the pages of a design show. */
@Service
@Transactional(readOnly = true)
class DesignViews {

    private final Designs designs;
    private final Surveys surveys;

    DesignViews(Designs designs, Surveys surveys) {
        this.designs = designs;
        this.surveys = surveys;
    }

    /** One part in the list. @param shape of its state: todo, done */
    record PartLine(String title, String slug, String shape, String state) {}

    /** @param lacking what survey and contract do not say yet */
    record Overview(Designs.Draft draft, List<PartLine> parts, List<DesignChecks.Group> checks, List<String> lacking) {

        public long failing() {
            return DesignChecks.count(checks, Verdict.FAIL);
        }

        public long unknown() {
            return DesignChecks.count(checks, Verdict.CANNOT_TELL);
        }

        public long forEngineer() {
            return DesignChecks.count(checks, Verdict.NEEDS_ENGINEER);
        }

        public long remarks() {
            return DesignChecks.count(checks, Verdict.REMARK);
        }

        public long passing() {
            return DesignChecks.count(checks, Verdict.PASS);
        }
    }

    Overview overview(UUID projectId) {
        Designs.Draft draft = designs.draft(projectId);
        List<PartLine> parts =
                Arrays.stream(Part.values()).map(part -> line(draft, part)).toList();
        return new Overview(
                draft,
                parts,
                draft.isBegun() ? DesignChecks.of(draft.facts()) : List.of(),
                lacking(surveys.factsUnchecked(projectId)));
    }

    private static PartLine line(Designs.Draft draft, Part part) {
        List<Cells> rows = draft.kept(part).rows();
        String state = rows.isEmpty()
                ? "not written"
                : part.isRepeated()
                        ? rows.size() + (rows.size() == 1 ? " row" : " rows")
                        : filled(part, rows.get(0)) + " of " + part.cols().size() + " fields";
        return new PartLine(part.title(), part.slug(), rows.isEmpty() ? "todo" : "done", state);
    }

    private static long filled(Part part, Cells row) {
        return part.cols().stream().filter(col -> !row.isEmpty(col.name())).count();
    }

    /** What a designer needs of the survey; the survey's own page says it whole. */
    private static List<String> lacking(SurveyFacts survey) {
        List<String> lacking = new ArrayList<>();
        if (!survey.isRecorded()) {
            return List.of("a survey: nothing is recorded yet");
        }
        var service = survey.service();
        Stream.of(
                        service.type() == null ? "kind of the service" : "",
                        service.mainA() == null ? "rating of the main" : "",
                        service.busA() == null ? "rating of the busbar" : "",
                        survey.distances().disconnectToMeterFt() == null ? "distance from disconnect to meter" : "",
                        survey.horizon().isEmpty() ? "horizon readings" : "")
                .filter(one -> !one.isEmpty())
                .forEach(lacking::add);
        return lacking;
    }

    /** Offers of a part's fields in this project. */
    PartForm.Offers offers(Designs.Draft draft) {
        return col -> col.from().isEmpty() ? col.options() : listed(draft, col.from());
    }

    private static List<Option> listed(Designs.Draft draft, String from) {
        return switch (from) {
            case "modules" -> equipment(draft, EquipmentKind.MODULE, Part.ARRAYS, "module");
            case "inverters" -> equipment(draft, EquipmentKind.INVERTER, Part.INVERTERS, "type");
            case "arrays" -> marks(draft, Part.ARRAYS);
            case "inverterMarks" -> marks(draft, Part.INVERTERS);
            case "combiners" -> marks(draft, Part.COMBINERS);
            case "runs" -> marks(draft, Part.RUNS);
            case "placed" ->
                Stream.of(Part.ARRAYS, Part.INVERTERS, Part.COMBINERS, Part.DEVICES, Part.RUNS)
                        .flatMap(part -> marks(draft, part).stream())
                        .distinct()
                        .toList();
            default ->
                Stream.of(
                                marks(draft, Part.STRINGS).stream(),
                                marks(draft, Part.COMBINERS).stream(),
                                marks(draft, Part.INVERTERS).stream(),
                                marks(draft, Part.DEVICES).stream(),
                                Stream.of(
                                        new Option("AC panel", "AC panel"),
                                        new Option("POI", "point of interconnection")))
                        .flatMap(all -> all)
                        .distinct()
                        .toList();
        };
    }

    private static List<Option> marks(Designs.Draft draft, Part part) {
        return draft.kept(part).rows().stream()
                .map(row -> row.text("mark"))
                .filter(mark -> !mark.isEmpty())
                .map(mark -> new Option(mark, mark))
                .toList();
    }

    /** Offered ones, and those that the design names although they are no longer offered. */
    private static List<Option> equipment(Designs.Draft draft, EquipmentKind kind, Part part, String field) {
        List<String> named =
                draft.kept(part).rows().stream().map(row -> row.text(field)).toList();
        return draft.equipment().get(kind).values().stream()
                .filter(entry -> !entry.ended() || named.contains(entry.name()))
                .map(Entry::name)
                .map(name -> new Option(name, name))
                .toList();
    }

    /** What a proposal would write into a part, from what is kept. */
    List<Cells> proposed(Designs.Draft draft, Part part) {
        return new Proposer(
                        draft.facts(), surveys.factsUnchecked(draft.project().id()))
                .of(part);
    }

    /** Choices with an empty one first, for fields that need not be said. */
    static List<Option> withNone(Col col, List<Option> options) {
        List<Option> all = new ArrayList<>();
        all.add(new Option("", col.needed() ? "Choose" : "\u2013"));
        all.addAll(options);
        return all;
    }

    static String lower(String title) {
        return title.toLowerCase(Locale.ROOT);
    }
}
