package org.plumbrow.cutover.after;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The report of a day: looked at, opened as PDF, kept among the papers. */
@Controller
class DayReportController {

    private static final int REFUSED = 422;

    private final DayReports reports;

    DayReportController(DayReports reports) {
        this.reports = reports;
    }

    @GetMapping("/projects/{projectId}/outage/report/{windowId}")
    String report(@PathVariable UUID projectId, @PathVariable UUID windowId, Model model) {
        return page(projectId, windowId, List.of(), model);
    }

    private String page(UUID projectId, UUID windowId, List<Refusal> problems, Model model) {
        model.addAttribute("view", reports.page(projectId, windowId));
        model.addAttribute("against", problems);
        return "cutover/report";
    }

    @GetMapping("/projects/{projectId}/outage/report/{windowId}/{reportFor}")
    ResponseEntity<byte[]> pdf(
            @PathVariable UUID projectId, @PathVariable UUID windowId, @PathVariable String reportFor) {
        ReportFor reading = ReportFor.of(reportFor).orElseThrow(NotFound::new);
        // Before the log is closed the page says when there will be one.
        return reports.pdf(projectId, windowId, reading)
                .map(pdf -> shown(pdf, reading))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.SEE_OTHER)
                        .location(URI.create("/projects/%s/outage/report/%s".formatted(projectId, windowId)))
                        .build());
    }

    private static ResponseEntity<byte[]> shown(byte[] pdf, ReportFor reading) {
        String disposition = ContentDisposition.inline()
                .filename("report-for-the-" + reading.slug() + ".pdf", StandardCharsets.UTF_8)
                .build()
                .toString();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition)
                .header("X-Content-Type-Options", "nosniff")
                .body(pdf);
    }

    @PostMapping("/projects/{projectId}/outage/report/{windowId}/{reportFor}")
    String keep(
            @PathVariable UUID projectId,
            @PathVariable UUID windowId,
            @PathVariable String reportFor,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ReportFor reading = ReportFor.of(reportFor).orElseThrow(NotFound::new);
        Optional<Refusal> against = reports.keep(projectId, windowId, reading);
        if (against.isPresent()) {
            response.setStatus(REFUSED);
            return page(projectId, windowId, List.of(against.get()), model);
        }
        Flash.done(next, "The report is kept among the project's papers.");
        return "redirect:/projects/{projectId}/outage/report/{windowId}";
    }
}
