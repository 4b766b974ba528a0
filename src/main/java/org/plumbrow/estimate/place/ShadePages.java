package org.plumbrow.estimate.place;

import java.util.UUID;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The horizon before the work and on day one, and the year under each. */
@Controller
class ShadePages {

    private static final int ORDER = 435;

    private final ShadeReading reading;
    private final Words words;

    ShadePages(ShadeReading reading, Words words) {
        this.reading = reading;
        this.words = words;
    }

    @Bean
    static ProjectPage shadePage() {
        return new ProjectPage(ORDER, "estimate.shade.page", "/shade", May.SEE_ESTIMATE);
    }

    @GetMapping("/projects/{projectId}/shade")
    String show(@PathVariable UUID projectId, Model model) {
        ShadeView view = reading.of(projectId);
        model.addAttribute("sheet", view.title());
        model.addAttribute("view", view);
        model.addAttribute("answer", answer(view));
        ShadeYield year = view.year();
        if (year != null) {
            model.addAttribute("kwh", words.number(Math.abs(year.change().changeOfYear()), 0));
            model.addAttribute(
                    "percent", words.number(Math.abs(100 * year.change().shareOfYear()), 1));
        }
        return "estimate/shade";
    }

    /** The last word of the heading's key. */
    private static String answer(ShadeView view) {
        ShadeYield year = view.year();
        if (!view.isRead()) {
            return "unread";
        }
        if (year == null) {
            return "noyield";
        }
        return year.again() ? "again." + year.change().verdict().name().toLowerCase(java.util.Locale.ROOT) : "once";
    }
}
