package org.plumbrow.project.list;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Csv;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Place;
import org.plumbrow.web.Role;
import org.plumbrow.web.Words;
import org.springframework.context.MessageSource;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Which projects are there, and who must do what on which by when? */
@Controller
class ListPage {

    private final ProjectList list;
    private final Access access;
    private final BranchPeople people;
    private final BranchSettings settings;
    private final MessageSource messages;
    private final Words words;

    ListPage(
            ProjectList list,
            Access access,
            BranchPeople people,
            BranchSettings settings,
            MessageSource messages,
            Words words) {
        this.list = list;
        this.access = access;
        this.people = people;
        this.settings = settings;
        this.messages = messages;
        this.words = words;
    }

    @Bean
    static Place projectsPlace() {
        return Place.inTheRow(20, "project.place", "/projects", May.SEE_PROJECTS);
    }

    /** What the filter's lists offer. */
    record Choices(
            List<Option> shows,
            List<Option> stages,
            List<Option> managers,
            List<Option> crews,
            List<Option> utilities) {}

    @GetMapping("/projects")
    String show(@ModelAttribute("filter") ListFilter filter, Model model) {
        ProjectList.Found found = list.find(filter);
        model.addAttribute("found", found);
        model.addAttribute("answer", answer(filter, found));
        model.addAttribute("choices", choices(access.branch()));
        model.addAttribute("orders", Order.values());
        return "project/list";
    }

    @GetMapping("/projects/export")
    void export(@ModelAttribute("filter") ListFilter filter, HttpServletResponse response) throws IOException {
        access.require(May.EXPORT);
        Csv.headers("projects.csv").forEach((name, values) -> response.addHeader(name, values.get(0)));
        try (Writer out = new java.io.OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8)) {
            Csv table = Csv.to(
                    out,
                    "number",
                    "name",
                    "place",
                    "stage",
                    "standing",
                    "system_kw_dc",
                    "mounting",
                    "project_manager",
                    "acts_next",
                    "acts_by",
                    "missing_items",
                    "promised_milestone",
                    "promised_on",
                    "planned_on",
                    "late",
                    "crews");
            list.export(filter, row -> table.row(cells(row)));
        }
    }

    private static List<String> cells(ListRow row) {
        return List.of(
                row.number(),
                row.name(),
                row.place(),
                row.stageWords(),
                row.shown().toLowerCase(Locale.ROOT).replace('_', ' '),
                text(row.systemKwDc()),
                row.mountingWords(),
                text(row.managerName()),
                text(row.actsNext()),
                text(row.actsBy()),
                text(row.missing()),
                row.milestoneWords(),
                text(row.promisedOn()),
                text(row.plannedOn()),
                row.late() ? "yes" : "no",
                row.crewNames());
    }

    private static String text(@Nullable Object value) {
        if (value instanceof BigDecimal figure) {
            return figure.stripTrailingZeros().toPlainString();
        }
        return value instanceof LocalDate day ? day.toString() : value == null ? "" : value.toString();
    }

    private Choices choices(BranchCard branch) {
        List<Option> shows = new ArrayList<>();
        for (Show show : Show.values()) {
            shows.add(new Option(show.inAddress(), say("project.list.show." + show.inAddress())));
        }
        List<Option> stages = new ArrayList<>(List.of(any(), new Option("new", Stage.wordsOf(null))));
        for (Stage stage : Stage.values()) {
            stages.add(new Option(stage.name().toLowerCase(Locale.ROOT), stage.words()));
        }
        List<Option> managers = new ArrayList<>(List.of(
                any(),
                new Option("me", say("project.list.manager.me")),
                new Option("nobody", say("project.list.manager.nobody"))));
        people.of(branch.id()).stream()
                .filter(person -> person.roles().contains(Role.PROJECT_MANAGER)
                        || person.roles().contains(Role.MANAGER))
                .forEach(person -> managers.add(new Option(person.id().toString(), person.name())));
        List<Option> crews = new ArrayList<>(List.of(any()));
        crews.addAll(list.crews());
        List<Option> utilities = new ArrayList<>(List.of(any()));
        settings.utilities(branch.id())
                .forEach(utility -> utilities.add(new Option(utility.id().toString(), utility.name())));
        return new Choices(shows, stages, managers, crews, utilities);
    }

    /** "42 projects are under way, 3 late". */
    private String answer(ListFilter filter, ProjectList.Found found) {
        String counted = words.number(found.counted(), 0);
        if (found.more()) {
            return say("project.list.more", counted);
        }
        String key = filter.narrows()
                ? "project.list.found"
                : "project.list.title." + filter.shown().inAddress();
        String late = found.late() == 0 ? "" : say("project.list.late", found.late(), words.number(found.late(), 0));
        return say(key, found.counted(), counted) + late;
    }

    private Option any() {
        return new Option("", say("project.list.any"));
    }

    private String say(String key, Object... facts) {
        return messages.getMessage(key, facts, Locale.US);
    }
}
