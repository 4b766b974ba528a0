package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvString;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.design.drawing.Quantities;
import org.plumbrow.design.equipment.Entry;
import org.plumbrow.design.equipment.EquipmentKind;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.DesignParts;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Csv;
import org.plumbrow.web.Option;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What another module or inverter would do, before anything is changed; and what the design takes of everything. */
@Controller
class TryPages {

    private final Designs designs;
    private final ProjectTitles titles;

    TryPages(Designs designs, ProjectTitles titles) {
        this.designs = designs;
        this.titles = titles;
    }

    /** One design beside another. */
    record Side(
            String name,
            int modules,
            double kwDc,
            double kwAc,
            int strings,
            String lengths,
            long failing,
            List<String> fails) {

        static Side of(String name, DesignFacts design) {
            var groups = DesignChecks.of(design);
            List<String> fails = groups.stream()
                    .flatMap(group -> group.checks().stream())
                    .filter(check -> check.verdict() == Verdict.FAIL)
                    .map(check -> (check.sentence() + " " + check.remedy()).strip())
                    .toList();
            return new Side(
                    name,
                    design.modules(),
                    design.kwDc(),
                    design.kwAc(),
                    design.strings().size(),
                    lengths(design),
                    fails.size(),
                    fails);
        }

        private static String lengths(DesignFacts design) {
            return design.strings().stream()
                    .map(PvString::modules)
                    .distinct()
                    .sorted()
                    .map(String::valueOf)
                    .reduce((one, two) -> one + ", " + two)
                    .orElse("\u2013");
        }
    }

    @GetMapping("/projects/{projectId}/design/try")
    String tryIt(
            @PathVariable UUID projectId,
            @RequestParam @Nullable String module,
            @RequestParam @Nullable String inverter,
            Model model) {
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return DesignPages.beginFirst(projectId);
        }
        String otherModule = known(draft, EquipmentKind.MODULE, module, Part.ARRAYS, "module");
        String otherInverter = known(draft, EquipmentKind.INVERTER, inverter, Part.INVERTERS, "type");
        List<Side> sides = new ArrayList<>();
        sides.add(Side.of("As drawn", draft.facts()));
        if (module != null || inverter != null) {
            sides.add(Side.of(otherModule + ", " + otherInverter, tried(draft, otherModule, otherInverter)));
        }
        model.addAttribute("sheet", titles.of(draft.project()));
        model.addAttribute("sides", sides);
        model.addAttribute("module", otherModule);
        model.addAttribute("inverter", otherInverter);
        model.addAttribute("modules", options(draft, EquipmentKind.MODULE));
        model.addAttribute("inverters", options(draft, EquipmentKind.INVERTER));
        return "design/try";
    }

    private static List<Option> options(Designs.Draft draft, EquipmentKind kind) {
        return draft.equipment().get(kind).values().stream()
                .filter(entry -> !entry.ended())
                .map(Entry::name)
                .map(name -> new Option(name, name))
                .toList();
    }

    /** The one asked for, else the one that is drawn, else the first of the catalogue. */
    private static String known(
            Designs.Draft draft, EquipmentKind kind, @Nullable String asked, Part part, String field) {
        var all = draft.equipment().get(kind);
        if (asked != null && all.containsKey(asked)) {
            return asked;
        }
        return draft.kept(part).rows().stream()
                .map(row -> row.text(field))
                .filter(all::containsKey)
                .findFirst()
                .orElseGet(() -> all.keySet().iterator().next());
    }

    /** Other equipment everywhere, strings proposed anew, runs and devices as drawn. */
    private DesignFacts tried(Designs.Draft draft, String module, String inverter) {
        DesignParts parts = draft.parts()
                .with(Part.ARRAYS, replaced(draft.kept(Part.ARRAYS).rows(), "module", module))
                .with(Part.INVERTERS, replaced(draft.kept(Part.INVERTERS).rows(), "type", inverter));
        DesignFacts other = designs.facts(draft.project(), parts);
        return designs.facts(draft.project(), parts.with(Part.STRINGS, new ProposedStrings(other).rows()));
    }

    private static List<Cells> replaced(List<Cells> rows, String field, String value) {
        return rows.stream().map(row -> row.with(field, value)).toList();
    }

    @GetMapping("/projects/{projectId}/design/quantities")
    String quantities(@PathVariable UUID projectId, Model model) {
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return DesignPages.beginFirst(projectId);
        }
        model.addAttribute("sheet", titles.of(draft.project()));
        model.addAttribute("lines", Quantities.of(draft.facts()).lines());
        return "design/quantities";
    }

    @GetMapping("/projects/{projectId}/design/quantities.csv")
    ResponseEntity<String> table(@PathVariable UUID projectId) {
        Designs.Draft draft = designs.draft(projectId);
        StringBuilder text = new StringBuilder();
        Csv table = Csv.to(text, "group", "what", "amount", "unit", "lead_time_working_days");
        Quantities.of(draft.facts())
                .lines()
                .forEach(line -> table.row(List.of(
                        line.group(),
                        line.what(),
                        "%.0f".formatted(line.quantity()),
                        line.unit().words(line.quantity()),
                        line.lead())));
        return ResponseEntity.ok()
                .headers(Csv.headers(draft.project().number() + "-quantities.csv"))
                .body(text.toString());
    }
}
