package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.LogPages.Reply;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** People on site and near misses, each on a page of its own beside the steps. */
@Controller
class LogPeopleController {

    private static final String PEOPLE = "people";
    private static final String NEAR_MISS = "near-miss";
    private static final String BACK = "redirect:/projects/{projectId}/day-log/";

    private final LogPages pages;
    private final LogPeople people;

    LogPeopleController(LogPages pages, LogPeople people) {
        this.pages = pages;
        this.people = people;
    }

    @GetMapping("/projects/{projectId}/day-log/people")
    String people(@PathVariable UUID projectId, Model model) {
        model.addAttribute("beside", people.beside(projectId));
        return pages.show(projectId, PEOPLE, Typed.NOTHING, model);
    }

    @PostMapping("/projects/{projectId}/day-log/people")
    String arrives(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        TypedTime time = TypedTime.of(all.get("at"));
        Said said = time.isTime()
                ? people.arrives(
                        projectId,
                        new LogPeople.Arrival(
                                LogPages.entry(all),
                                all.getOrDefault("name", ""),
                                all.getOrDefault("role", ""),
                                time.time()))
                : TypedTime.refused("at");
        return answer(projectId, said, all, new Reply(PEOPLE, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/people/{entryId}/left")
    String leaves(
            @PathVariable UUID projectId,
            @PathVariable UUID entryId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        TypedTime time = TypedTime.of(all.get("left"));
        Said said = time.isTime()
                ? people.leaves(projectId, LogPages.entry(all), entryId, time.time())
                : TypedTime.refused("");
        Map<String, String> typed = new HashMap<>(all);
        typed.put("of", entryId.toString());
        return answer(projectId, said, typed, new Reply(PEOPLE, model, response, next));
    }

    @GetMapping("/projects/{projectId}/day-log/near-miss")
    String nearMiss(@PathVariable UUID projectId, Model model) {
        model.addAttribute("beside", people.beside(projectId));
        return pages.show(projectId, NEAR_MISS, Typed.NOTHING, model);
    }

    @PostMapping("/projects/{projectId}/day-log/near-miss")
    String nearMiss(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = people.nearMiss(
                projectId,
                new LogPeople.Told(
                        LogPages.entry(all),
                        all.getOrDefault("happened", ""),
                        all.getOrDefault("couldHave", ""),
                        all.getOrDefault("done", "")));
        return answer(projectId, said, all, new Reply(NEAR_MISS, model, response, next));
    }

    private String answer(UUID projectId, Said said, Map<String, String> typed, Reply reply) {
        if (said.isStored()) {
            LogPages.stored(said, reply);
            return BACK + reply.view();
        }
        reply.model().addAttribute("beside", people.beside(projectId));
        return pages.answer(projectId, said, typed, reply);
    }
}
