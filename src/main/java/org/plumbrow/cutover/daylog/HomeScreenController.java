package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.UUID;
import org.plumbrow.project.ProjectFacts;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Lets a phone put the log of one project on its home screen, from where it opens without signal (W3C web app manifest). */
@Controller
class HomeScreenController {

    private static final MediaType MANIFEST = MediaType.parseMediaType("application/manifest+json");
    private static final String PAPER = "#f6f4ee";
    private static final List<Icon> ICONS = List.of(
            new Icon("/icon-192.png", "192x192", "image/png", "any"),
            new Icon("/icon-512.png", "512x512", "image/png", "any"),
            new Icon("/icon-maskable-512.png", "512x512", "image/png", "maskable"));

    private final LogDoor door;

    HomeScreenController(LogDoor door) {
        this.door = door;
    }

    /** The names are those of the standard. */
    record Manifest(
            String id,
            String name,
            String short_name,
            String lang,
            String start_url,
            String scope,
            String display,
            String background_color,
            String theme_color,
            List<Icon> icons) {}

    record Icon(String src, String sizes, String type, String purpose) {}

    @GetMapping("/projects/{projectId}/day-log/manifest")
    ResponseEntity<Manifest> manifest(@PathVariable UUID projectId) {
        ProjectFacts project = door.require(projectId);
        String log = "/projects/" + projectId + "/day-log";
        return ResponseEntity.ok()
                .contentType(MANIFEST)
                .cacheControl(CacheControl.noCache())
                .body(new Manifest(
                        log,
                        "Day log, " + project.name(),
                        project.name(),
                        "en-US",
                        log,
                        log,
                        "standalone",
                        PAPER,
                        PAPER,
                        ICONS));
    }
}
