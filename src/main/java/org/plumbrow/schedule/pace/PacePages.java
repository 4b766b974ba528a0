package org.plumbrow.schedule.pace;

import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What the branch has learned of its own pace, among its settings. */
@Controller
class PacePages {

    private final PaceReading reading;
    private final Access access;

    PacePages(PaceReading reading, Access access) {
        this.reading = reading;
        this.access = access;
    }

    @GetMapping("/settings/learned")
    String show(Model model) {
        model.addAttribute(
                "paces", reading.of(access.require(May.CHANGE_SETTINGS).id()));
        return "schedule/learned";
    }
}
