package org.plumbrow.design.draft;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.drawing.Drawings;
import org.plumbrow.design.drawing.Packet;
import org.plumbrow.design.drawing.Sheet;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.NotFound;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The drawings of a design, made anew from its data each time they are looked at: each by itself, and all as a PDF. */
@Controller
class DrawingPages {

    private static final MediaType SVG = new MediaType("image", "svg+xml", StandardCharsets.UTF_8);
    private static final double DEGREES_AN_HOUR = 15;

    private final Designs designs;
    private final Revisions revisions;
    private final ProjectTitles titles;

    DrawingPages(Designs designs, Revisions revisions, ProjectTitles titles) {
        this.designs = designs;
        this.revisions = revisions;
        this.titles = titles;
    }

    @GetMapping("/projects/{projectId}/design/drawings")
    String drawings(@PathVariable UUID projectId, @RequestParam @Nullable String revision, Model model) {
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return DesignPages.beginFirst(projectId);
        }
        DesignFacts facts = asked(draft, revision);
        model.addAttribute("sheet", titles.of(draft.project()));
        model.addAttribute("drawings", facts.modules() == 0 ? List.of() : sheets(facts, draft.project()));
        model.addAttribute("revision", facts.revision());
        model.addAttribute(
                "letters",
                revisions.of(projectId).stream().map(Revision::letter).toList());
        return "design/drawings";
    }

    private DesignFacts asked(Designs.Draft draft, @Nullable String revision) {
        return revision == null || revision.isBlank()
                ? draft.facts()
                : designs.frozen(draft.project().id(), revision.strip()).orElseThrow(NotFound::new);
    }

    private static List<Sheet> sheets(DesignFacts facts, ProjectFacts project) {
        return Drawings.sheets(facts, place(project.site()));
    }

    /** Where the winter sun is drawn for; null without coordinates. The clock does not matter for a day's highest sun. */
    private static @Nullable Place place(ProjectFacts.Site site) {
        BigDecimal latitude = site.latitudeDeg();
        BigDecimal longitude = site.longitudeDeg();
        return latitude == null || longitude == null
                ? null
                : new Place(
                        latitude.doubleValue(),
                        longitude.doubleValue(),
                        0,
                        Math.round(longitude.doubleValue() / DEGREES_AN_HOUR));
    }

    /** The frozen revision that is asked for, else the draft as it stands. */
    @GetMapping("/projects/{projectId}/design/packet.pdf")
    ResponseEntity<byte[]> packet(@PathVariable UUID projectId, @RequestParam @Nullable String revision) {
        Designs.Draft draft = designs.draft(projectId);
        DesignFacts facts = asked(draft, revision);
        if (facts.modules() == 0) {
            return ResponseEntity.status(302)
                    .header("Location", "/projects/" + projectId + "/design")
                    .build();
        }
        String state = facts.revision() == null ? "draft" : "revision-" + facts.revision();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(
                                        draft.project().number() + "-design-" + state + ".pdf", StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(Packet.of(facts, sheets(facts, draft.project())));
    }

    @GetMapping("/projects/{projectId}/design/drawings/{sheetSlug}")
    ResponseEntity<String> sheet(
            @PathVariable UUID projectId, @PathVariable String sheetSlug, @RequestParam @Nullable String revision) {
        Designs.Draft draft = designs.draft(projectId);
        DesignFacts facts = asked(draft, revision);
        Optional<Sheet> found = facts.modules() == 0
                ? Optional.empty()
                : sheets(facts, draft.project()).stream()
                        .filter(one -> one.slug().equals(sheetSlug))
                        .findFirst();
        return found.map(one -> ResponseEntity.ok()
                        .contentType(SVG)
                        .header("Content-Security-Policy", "default-src 'none'; style-src 'none'; sandbox")
                        .body(one.svg()))
                .orElseGet(() -> ResponseEntity.status(302)
                        .header("Location", "/projects/" + projectId + "/design/drawings")
                        .body(""));
    }
}
