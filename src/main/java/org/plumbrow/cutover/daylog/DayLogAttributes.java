package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpSession;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.web.Option;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What each page of the day log knows, whichever controller shows it. */
@ControllerAdvice(
        assignableTypes = {
            DayLogController.class,
            DayLogChangesController.class,
            LogEntryController.class,
            LogPeopleController.class
        })
class DayLogAttributes {

    @ModelAttribute("night")
    boolean night(HttpSession session) {
        return DimLight.isOn(session);
    }

    @ModelAttribute("services")
    List<Option> services() {
        return Arrays.stream(Service.values())
                .map(service -> new Option(service.name(), service.words()))
                .toList();
    }
}
