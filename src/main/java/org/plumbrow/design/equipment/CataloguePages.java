package org.plumbrow.design.equipment;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.PartForm;
import org.plumbrow.evidence.table.TableReader;
import org.plumbrow.evidence.table.TableUnreadable;
import org.plumbrow.evidence.table.UserTable;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.MapBindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The catalogue of a branch: looked at, added to by form or table, ended. */
@Controller
class CataloguePages {

    private static final int ORDER = 56;
    private static final int MOST_BYTES = 1_000_000;

    private final Catalogue catalogue;
    private final Access access;
    private final Saving saving;

    CataloguePages(Catalogue catalogue, Access access, Saving saving) {
        this.catalogue = catalogue;
        this.access = access;
        this.saving = saving;
    }

    @Bean
    static Place cataloguePlace() {
        return Place.underOwnName(ORDER, "design.equipment.place", "/design-equipment", May.SEE_DESIGN);
    }

    @GetMapping("/design-equipment")
    String list(Model model) {
        UUID branch = access.require(May.SEE_DESIGN).id();
        model.addAttribute("modules", catalogue.list(branch, EquipmentKind.MODULE));
        model.addAttribute("inverters", catalogue.list(branch, EquipmentKind.INVERTER));
        return "design/equipment";
    }

    /** For the template: choices of a field. */
    record Offered() {
        public List<Option> of(Col col) {
            return col.options();
        }
    }

    @GetMapping("/design-equipment/{equipmentKind}/new")
    String blank(@PathVariable String equipmentKind, Model model) {
        access.require(May.WRITE_DESIGN);
        EquipmentKind which = EquipmentKind.of(equipmentKind).orElseThrow(NotFound::new);
        model.addAttribute("form", PartForm.of(List.of(), which.cols(), false, -1));
        return page(which, null, model);
    }

    private String page(EquipmentKind kind, @Nullable Entry entry, Model model) {
        model.addAttribute("kind", kind);
        model.addAttribute("entry", entry);
        model.addAttribute("cols", kind.cols());
        model.addAttribute("offers", new Offered());
        return "design/entry";
    }

    @PostMapping("/design-equipment/{equipmentKind}/new")
    String add(
            @PathVariable String equipmentKind,
            @ModelAttribute("form") PartForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branch = access.require(May.WRITE_DESIGN).id();
        EquipmentKind which = EquipmentKind.of(equipmentKind).orElseThrow(NotFound::new);
        Cells cells = read(which, form, errors);
        return saving.of(errors, response, () -> page(which, null, model))
                .refusedAt("rows[0].cells[name]")
                .make(() -> catalogue.add(branch, which, cells), () -> done(next, cells));
    }

    private static Cells read(EquipmentKind kind, PartForm form, BindingResult errors) {
        List<Cells> read = form.read(kind.cols(), Col::options, errors);
        if (read.isEmpty()) {
            errors.reject("refused", "Nothing was written. Fill in the data sheet.");
            return Cells.none();
        }
        return read.get(0);
    }

    private static String done(RedirectAttributes next, Cells cells) {
        Flash.done(next, cells.text("name") + ": saved.");
        return "redirect:/design-equipment";
    }

    @GetMapping("/design-equipment/{catalogueId}")
    String show(@PathVariable UUID catalogueId, Model model) {
        Entry entry = catalogue.entry(access.require(May.SEE_DESIGN).id(), catalogueId);
        model.addAttribute(
                "form", PartForm.of(List.of(entry.cells()), entry.kind().cols(), false, entry.version()));
        return page(entry.kind(), entry, model);
    }

    @PostMapping("/design-equipment/{catalogueId}")
    String change(
            @PathVariable UUID catalogueId,
            @ModelAttribute("form") PartForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branch = access.require(May.WRITE_DESIGN).id();
        Entry entry = catalogue.entry(branch, catalogueId);
        List<Col> cols = entry.kind().cols();
        Cells cells = read(entry.kind(), form, errors);
        return saving.of(errors, response, () -> page(entry.kind(), entry, model))
                .refusedAt("rows[0].cells[name]")
                .make(
                        () -> catalogue.change(branch, catalogueId, form.version(), cells),
                        () -> done(next, cells),
                        model,
                        () -> PartForm.written(List.of(cells), cols, Col::options),
                        () -> theirs(branch, catalogueId, cols));
    }

    private Saving.Theirs theirs(UUID branch, UUID id, List<Col> cols) {
        Entry now = catalogue.entry(branch, id);
        return new Saving.Theirs(
                "this entry of the catalogue",
                "/design-equipment/" + id,
                now.version(),
                PartForm.written(List.of(now.cells()), cols, Col::options));
    }

    @PostMapping("/design-equipment/{catalogueId}/offer")
    String offer(
            @PathVariable UUID catalogueId,
            @RequestParam(defaultValue = "false") boolean ended,
            @RequestParam(defaultValue = "-1") long version,
            RedirectAttributes next) {
        UUID branch = access.require(May.WRITE_DESIGN).id();
        try {
            catalogue.offer(branch, catalogueId, version, ended);
            Flash.done(next, ended ? "It is no longer offered. Designs that name it keep it." : "It is offered again.");
        } catch (EditedMeanwhile newer) {
            Flash.done(next, "Somebody has changed this entry meanwhile. Look at it first.");
        }
        return "redirect:/design-equipment/" + catalogueId;
    }

    @GetMapping("/design-equipment/{equipmentKind}/file")
    String file(@PathVariable String equipmentKind, Model model) {
        access.require(May.WRITE_DESIGN);
        return filePage(EquipmentKind.of(equipmentKind).orElseThrow(NotFound::new), model);
    }

    private static String filePage(EquipmentKind kind, Model model) {
        model.addAttribute("kind", kind);
        model.addAttribute("columns", kind.cols().stream().map(Col::name).collect(Collectors.joining(", ")));
        return "design/equipment-file";
    }

    /** @param refused a sentence for each row that did not come in */
    record Brought(int in, List<String> refused) {}

    @PostMapping("/design-equipment/{equipmentKind}/file")
    String bring(
            @PathVariable String equipmentKind,
            @RequestParam @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response)
            throws IOException {
        UUID branch = access.require(May.WRITE_DESIGN).id();
        EquipmentKind which = EquipmentKind.of(equipmentKind).orElseThrow(NotFound::new);
        Optional<String> wrong = notAFile(file);
        try {
            if (wrong.isEmpty() && file != null) {
                model.addAttribute("brought", brought(branch, which, TableReader.read(file.getBytes())));
            }
        } catch (TableUnreadable unreadable) {
            wrong = Optional.of(unreadable.sentence());
        }
        wrong.ifPresent(sentence -> {
            model.addAttribute("wrong", sentence);
            response.setStatus(422);
        });
        return filePage(which, model);
    }

    private static Optional<String> notAFile(@Nullable MultipartFile file) {
        if (file == null || file.isEmpty()) {
            return Optional.of("Choose a file first.");
        }
        return file.getSize() > MOST_BYTES
                ? Optional.of("The file is larger than 1 MB. Bring it in parts.")
                : Optional.empty();
    }

    private Brought brought(UUID branch, EquipmentKind kind, UserTable table) {
        List<String> refused = new ArrayList<>();
        int in = 0;
        for (UserTable.Row row : table.rows()) {
            Optional<String> wrong = wrong(branch, kind, cells(kind, table, row));
            wrong.ifPresent(sentence -> refused.add("Line " + row.line() + ": " + sentence));
            in += wrong.isPresent() ? 0 : 1;
        }
        return new Brought(in, refused);
    }

    private Optional<String> wrong(UUID branch, EquipmentKind kind, Cells cells) {
        PartForm form = PartForm.of(List.of(cells), kind.cols(), false, -1);
        BindingResult errors = new MapBindingResult(new LinkedHashMap<>(), "row");
        form.read(kind.cols(), Col::options, errors);
        if (errors.hasErrors()) {
            return Optional.of(errors.getAllErrors().stream()
                    .map(error -> error.getDefaultMessage())
                    .collect(Collectors.joining(" ")));
        }
        return catalogue.add(branch, kind, cells).map(refusal -> refusal.sentence());
    }

    /** A row's cells by the columns' own names, capitals and spaces aside. */
    private static Cells cells(EquipmentKind kind, UserTable table, UserTable.Row row) {
        Map<String, String> byHead = new LinkedHashMap<>();
        for (int at = 0; at < table.header().size(); at++) {
            byHead.put(plain(table.header().get(at)), row.cells().get(at).strip());
        }
        Map<String, String> cells = new LinkedHashMap<>();
        kind.cols().forEach(col -> cells.put(col.name(), choice(col, byHead.getOrDefault(plain(col.name()), ""))));
        return new Cells(cells);
    }

    private static String choice(Col col, String typed) {
        return col.options().stream()
                .map(Option::value)
                .filter(value -> value.equalsIgnoreCase(typed))
                .findFirst()
                .orElse(typed);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
