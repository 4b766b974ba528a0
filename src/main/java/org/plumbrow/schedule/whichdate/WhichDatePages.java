package org.plumbrow.schedule.whichdate;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** "If this customer signs today, what can we promise?" Asked and answered by one address, as nothing is changed. */
@Controller
class WhichDatePages {

    private static final String QUESTION = "Which date can be promised to who signs today?";

    private final WhichDate dates;

    WhichDatePages(WhichDate dates) {
        this.dates = dates;
    }

    @GetMapping("/look-ahead/which-date")
    String show(
            @ModelAttribute("job") WhichDateForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        WhichDate.Choices choices = dates.choices();
        Optional<WhichDate.Answer> answer = Optional.empty();
        String heading = QUESTION;
        if (form.isAsked()) {
            Optional<WhichDateForm.Job> job = form.read(new Entered(errors), choices.utilities(), choices.offices());
            answer = job.flatMap(dates::of);
            heading = job.isPresent() ? heading(answer) : QUESTION;
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        answer.ifPresent(found -> model.addAttribute("answer", found));
        model.addAttribute("heading", heading);
        model.addAttribute("mountings", mountings());
        model.addAttribute("utilities", options(choices.utilities()));
        model.addAttribute("offices", options(choices.offices()));
        return "schedule/which-date";
    }

    private static String heading(Optional<WhichDate.Answer> answer) {
        return answer.map(found -> "Signed today, the system is on by "
                        + DayWords.withYear(found.on().fourInFive()) + " in four runs of five")
                .orElse("No date: no crew of this branch can do some of this work");
    }

    private static List<Option> mountings() {
        List<Option> all = new ArrayList<>(List.of(new Option("", "choose")));
        Arrays.stream(Mounting.values())
                .map(one -> new Option(one.name(), one.words()))
                .forEach(all::add);
        return all;
    }

    private static List<Option> options(Map<UUID, String> known) {
        List<Option> all = new ArrayList<>(List.of(new Option("", "not known")));
        known.forEach((id, name) -> all.add(new Option(id.toString(), name)));
        return all;
    }
}
