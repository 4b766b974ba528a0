package org.plumbrow.branch.change;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.RateTables;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** All settings of a branch with what they say now, and what was changed of them. */
@Controller
class ChangePages {

    private final BranchSettings settings;
    private final RateTables tables;
    private final ChangeReading changes;
    private final Access access;

    ChangePages(BranchSettings settings, RateTables tables, ChangeReading changes, Access access) {
        this.settings = settings;
        this.tables = tables;
        this.changes = changes;
        this.access = access;
    }

    /** How many rows of a table differ from what was shipped. */
    record Own(long changed, long all) {}

    @GetMapping("/settings")
    String all(Model model) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        BranchFacts branch = settings.facts(branchId);
        model.addAttribute("branchFacts", branch);
        model.addAttribute("zoneWords", branch.zone().getDisplayName(TextStyle.FULL, Locale.US));
        model.addAttribute(
                "utilities",
                settings.utilities(branchId).stream()
                        .filter(utility -> utility.endedOn().isEmpty())
                        .map(UtilityFacts::name)
                        .toList());
        model.addAttribute(
                "offices",
                settings.permitOffices(branchId).stream()
                        .filter(office -> office.endedOn().isEmpty())
                        .map(PermitOfficeFacts::name)
                        .toList());
        model.addAttribute("rates", own(tables.rates(branchId)));
        model.addAttribute("fixedTimes", own(tables.fixedTimes(branchId)));
        model.addAttribute("waits", own(tables.waits(branchId)));
        model.addAttribute("lastChange", changes.last(branchId).orElse(null));
        return "branch/settings";
    }

    private static <T> Own own(List<Kept<T>> rows) {
        return new Own(rows.stream().filter(Kept::changed).count(), rows.size());
    }

    @GetMapping("/settings/changes")
    String changes(@RequestParam(defaultValue = "1") int page, Model model) {
        ChangeReading.Page found =
                changes.page(access.require(May.CHANGE_SETTINGS).id(), page);
        model.addAttribute("changes", found.lines());
        model.addAttribute("paging", found.paging());
        return "branch/changes";
    }
}
