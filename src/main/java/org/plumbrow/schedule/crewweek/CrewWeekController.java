package org.plumbrow.schedule.crewweek;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.crew.CrewPage;
import org.plumbrow.crew.Crews;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A crew's week on the phone, and its calendar link. */
@Controller
class CrewWeekController {

    private static final String BACK = "redirect:/crews/{crewId}/week";

    private final CrewWeek week;
    private final CrewLinks links;
    private final Crews crews;
    private final Access access;

    CrewWeekController(CrewWeek week, CrewLinks links, Crews crews, Access access) {
        this.week = week;
        this.links = links;
        this.crews = crews;
        this.access = access;
    }

    /** Where a crew lead lands: the own crew's week; without a crew, all crews. */
    @GetMapping("/crews/week")
    String own() {
        BranchCard branch = access.require(May.SEE_CREWS);
        return crews.crewsLedBy(branch.id(), access.visitor().personId()).stream()
                .findFirst()
                .map(crew -> "redirect:/crews/" + crew + "/week")
                .orElse("redirect:/crews");
    }

    @GetMapping("/crews/{crewId}/week")
    String show(
            @PathVariable UUID crewId,
            @RequestParam(name = "from", required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable
                    LocalDate from,
            Model model) {
        model.addAttribute("week", week.of(crewId, Optional.ofNullable(from)));
        model.addAttribute("feed", links.address(crewId).orElse(null));
        return "schedule/crew-week";
    }

    @PostMapping("/crews/{crewId}/feed")
    String makeLink(@PathVariable UUID crewId, RedirectAttributes next) {
        links.make(crewId);
        Flash.done(next, "The calendar has a new address. An older one opens nothing any more.");
        return BACK;
    }

    @PostMapping("/crews/{crewId}/feed/end")
    String endLink(@PathVariable UUID crewId, RedirectAttributes next) {
        links.end(crewId);
        Flash.done(next, "The calendar's address has ended.");
        return BACK;
    }

    @Configuration(proxyBeanMethods = false)
    static class Pages {
        @Bean
        CrewPage crewWeekPage() {
            return new CrewPage(100, "schedule.week.link", "/week");
        }
    }
}
