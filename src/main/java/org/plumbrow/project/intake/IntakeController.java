package org.plumbrow.project.intake;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.evidence.table.Cells.DateOrder;
import org.plumbrow.evidence.table.TableUnreadable;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Option;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The pages of a file that is brought: choose it, match its columns, look, take in. */
@Controller
class IntakeController {

    static final int SHOWN = 25;

    private final Intakes intakes;
    private final BackgroundRuns runs;

    IntakeController(Intakes intakes, BackgroundRuns runs) {
        this.intakes = intakes;
        this.runs = runs;
    }

    /** A field of the form: which column holds it. */
    record ColumnChoice(String field, String words, int column) {}

    @GetMapping("/projects/intake")
    String begin(Model model) {
        model.addAttribute("latest", intakes.latest());
        return "project/intake-begin";
    }

    @PostMapping("/projects/intake")
    String bring(
            @RequestParam(name = "file", required = false) MultipartFile file,
            Model model,
            HttpServletResponse response)
            throws IOException {
        try {
            byte[] bytes = file == null ? new byte[0] : file.getBytes();
            String name = file == null || file.getOriginalFilename() == null ? "" : file.getOriginalFilename();
            return "redirect:/projects/intake/" + intakes.bring(name, bytes);
        } catch (TableUnreadable unreadable) {
            response.setStatus(422);
            model.addAttribute("wrong", unreadable.sentence());
            return begin(model);
        }
    }

    @GetMapping("/projects/intake/{intakeId}")
    String look(@PathVariable UUID intakeId, Model model) {
        Intakes.Look look = intakes.look(intakeId);
        model.addAttribute("look", look);
        model.addAttribute("fields", fields(look.file().choices()));
        model.addAttribute("columns", columns(look.table().header()));
        model.addAttribute(
                "units",
                Arrays.stream(IntakeChoices.SizeUnit.values())
                        .map(u -> new Option(u.name(), u.words()))
                        .toList());
        model.addAttribute(
                "unsaid",
                Arrays.stream(IntakeChoices.Unsaid.values())
                        .map(u -> new Option(u.name(), u.words()))
                        .toList());
        model.addAttribute("shown", look.ready().stream().limit(SHOWN).toList());
        model.addAttribute(
                "shownLeftOut", look.leftOut().stream().limit(4L * SHOWN).toList());
        model.addAttribute(
                "run",
                runs.latest(Intakes.RUN_KIND, look.file().branchId(), intakeId).orElse(null));
        return "project/intake";
    }

    private static List<ColumnChoice> fields(IntakeChoices choices) {
        return Arrays.stream(IntakeField.values())
                .map(field -> new ColumnChoice(
                        field.name(), field.words(), choices.columns().getOrDefault(field, -1)))
                .toList();
    }

    private static List<Option> columns(List<String> header) {
        return Stream.concat(
                        Stream.of(new Option("-1", "–")),
                        IntStream.range(0, header.size()).mapToObj(i -> new Option(String.valueOf(i), header.get(i))))
                .toList();
    }

    @PostMapping("/projects/intake/{intakeId}")
    String choose(
            @PathVariable UUID intakeId,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            @RequestParam(name = "sizeUnit", defaultValue = "KILOWATTS") IntakeChoices.SizeUnit sizeUnit,
            @RequestParam(name = "dateOrder", defaultValue = "MONTH_FIRST") DateOrder dateOrder,
            @RequestParam(name = "unsaidMounting", defaultValue = "PITCHED_ROOF") IntakeChoices.Unsaid unsaid,
            @RequestParam Map<String, String> posted,
            RedirectAttributes next) {
        Map<IntakeField, Integer> columns = new EnumMap<>(IntakeField.class);
        for (IntakeField field : IntakeField.values()) {
            String column = posted.getOrDefault("column." + field.name(), "-1");
            if (column.matches("\\d{1,3}")) {
                columns.put(field, Integer.valueOf(column));
            }
        }
        try {
            intakes.choose(intakeId, version, new IntakeChoices(columns, sizeUnit, dateOrder, unsaid));
            Flash.done(next, "The file is read anew with these choices.");
        } catch (EditedMeanwhile newer) {
            Flash.done(
                    next,
                    "Somebody else changed the choices or took the file in after you opened it. This is how it stands now; choose again if it still can be.");
        }
        return "redirect:/projects/intake/{intakeId}";
    }

    @PostMapping("/projects/intake/{intakeId}/take-in")
    String takeIn(@PathVariable UUID intakeId) {
        intakes.takeIn(intakeId);
        return "redirect:/projects/intake/{intakeId}";
    }

    @GetMapping("/projects/intake/{intakeId}/left-out.csv")
    ResponseEntity<byte[]> leftOut(@PathVariable UUID intakeId) {
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("left-out.csv")
                                .build()
                                .toString())
                .body(intakes.leftOut(intakeId));
    }
}
