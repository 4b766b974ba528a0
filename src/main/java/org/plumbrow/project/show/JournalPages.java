package org.plumbrow.project.show;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.JournalCheck;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.JournalUndo;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Csv;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The journal of a project: read, checked against its own chain, taken out. */
@Controller
class JournalPages {

    private static final Duration UNDO_OFFERED = Duration.ofHours(24);

    private final JournalReader journal;
    private final JournalCheck check;
    private final ProjectTitles titles;
    private final List<JournalUndo> undos;
    private final Clock clock;

    JournalPages(
            JournalReader journal, JournalCheck check, ProjectTitles titles, List<JournalUndo> undos, Clock clock) {
        this.journal = journal;
        this.check = check;
        this.titles = titles;
        this.undos = undos;
        this.clock = clock;
    }

    @Bean
    static ProjectPage journalPage() {
        return new ProjectPage(900, "project.journal.page", "/journal", May.SEE_JOURNAL);
    }

    /** A line, with the address that undoes it where there is one. */
    record Shown(JournalLine line, @Nullable String undo) {}

    @GetMapping("/projects/{projectId}/journal")
    @Transactional(readOnly = true)
    public String show(
            @PathVariable UUID projectId, @RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        JournalReader.Page lines = journal.page(projectId, page);
        model.addAttribute("sheet", titles.of(projectId));
        model.addAttribute("paging", lines.paging());
        model.addAttribute(
                "lines",
                lines.lines().stream().map(line -> new Shown(line, undo(line))).toList());
        return "project/journal";
    }

    private @Nullable String undo(JournalLine line) {
        if (line.at().isBefore(clock.instant().minus(UNDO_OFFERED))) {
            return null;
        }
        return undos.stream()
                .map(undo -> undo.action(line))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(null);
    }

    @GetMapping("/projects/{projectId}/journal/check")
    @Transactional(readOnly = true)
    public String check(@PathVariable UUID projectId, Model model) {
        model.addAttribute("sheet", titles.of(projectId));
        model.addAttribute("found", check.check(projectId));
        return "project/journal-check";
    }

    @GetMapping("/projects/{projectId}/journal/export")
    @Transactional(readOnly = true)
    public ResponseEntity<String> export(@PathVariable UUID projectId) {
        ProjectTitle title = titles.of(projectId);
        StringBuilder text = new StringBuilder("\uFEFF");
        Csv table = Csv.to(text, "line", "at", "by", "kind", "sentence", "facts");
        journal.each(
                projectId,
                line -> table.row(List.of(
                        Integer.toString(line.number()),
                        line.at().toString(),
                        line.byName(),
                        line.kind(),
                        line.sentence(),
                        line.facts().toString())));
        return ResponseEntity.ok()
                .headers(Csv.headers(title.number() + "-journal.csv"))
                .body(text.toString());
    }
}
