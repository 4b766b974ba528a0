package org.plumbrow.cutover;

import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The place where one sees which power goes off next, and what that day still lacks. */
@Controller
class CutoversController {

    private static final int ORDER = 30;

    private final CutoverList list;

    CutoversController(CutoverList list) {
        this.list = list;
    }

    @Bean
    static Place cutovers() {
        return Place.inTheRow(ORDER, "cutover.place", "/cutovers", May.SEE_CUTOVERS);
    }

    @GetMapping("/cutovers")
    String cutovers(@RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        model.addAttribute("list", list.page(page));
        return "cutover/cutovers";
    }
}
