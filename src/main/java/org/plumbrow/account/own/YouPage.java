package org.plumbrow.account.own;

import java.util.Comparator;
import java.util.List;
import org.plumbrow.account.person.Devices;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Place;
import org.plumbrow.web.Visitor;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page behind a person's own name: their branches, what hangs there, and how they sign in and out. */
@Controller
class YouPage {

    private final Access access;
    private final Devices devices;
    private final List<Place> places;

    YouPage(Access access, Devices devices, List<Place> places) {
        this.access = access;
        this.devices = devices;
        this.places = places.stream()
                .filter(place -> place.where() == Place.Where.OWN_PAGE)
                .sorted(Comparator.comparingInt(Place::order))
                .toList();
    }

    /** A branch to change to. */
    record BranchLine(String code, String name, String roles, boolean here) {}

    @GetMapping("/you")
    String show(Model model) {
        Visitor visitor = access.visitor();
        BranchCard here = access.presentBranch().orElse(null);
        model.addAttribute("visitor", visitor);
        model.addAttribute("here", here);
        model.addAttribute("devices", devices.of(visitor.personId()));
        model.addAttribute(
                "branches",
                visitor.branches().stream()
                        .map(card ->
                                new BranchLine(card.code(), card.name(), visitor.roleWordsIn(card), card.equals(here)))
                        .toList());
        model.addAttribute(
                "places",
                here == null
                        ? List.of()
                        : places.stream().filter(place -> here.may(place.act())).toList());
        return "account/you";
    }
}
