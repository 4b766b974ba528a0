package org.plumbrow.cutover;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Entered;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** The hours in which a project's power can be off, ranked, each opened to what it was judged by. */
@Controller
class OutageHoursController {

    private final HoursReading reading;

    OutageHoursController(HoursReading reading) {
        this.reading = reading;
    }

    /** Any hour that somebody wants opened. */
    record AskedHour(@Nullable String day, @Nullable String time) {

        private @Nullable LocalDateTime read(BindingResult errors) {
            Entered entered = new Entered(errors);
            LocalDate date = entered.date("day", "the day", day);
            String typed = Entered.text(time);
            if (date == null || typed.isEmpty()) {
                return null;
            }
            try {
                return date.atTime(LocalTime.parse(typed));
            } catch (DateTimeParseException unreadable) {
                entered.refuse("time", "Write the time like 09:00.");
                return null;
            }
        }
    }

    @GetMapping("/projects/{projectId}/outage/hours")
    String hours(
            @PathVariable UUID projectId,
            @ModelAttribute("askedHour") AskedHour asked,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        LocalDateTime time = asked.read(errors);
        HoursView view = reading.ranked(projectId, time);
        if (time != null && view.opened() == null && view.lookedAt() > 0) {
            errors.rejectValue("day", "refused", "Choose a day from tomorrow on, within the weeks looked at.");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        model.addAttribute("view", view);
        return "cutover/hours";
    }
}
