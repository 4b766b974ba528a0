package org.plumbrow.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Comparator;
import java.util.List;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What the layout needs on each page: who is asking, which branch, which places their role may open. */
@ControllerAdvice
class LayoutModel {

    /** An entry of the row, ready to print. */
    record Entry(String key, String href, boolean here) {}

    /** The head of each page. @param path address of the page, for the link that leads to itself */
    record Head(
            String personName,
            String roleWords,
            String branchName,
            List<BranchCard> branches,
            List<Entry> row,
            String path) {}

    private final Access access;
    private final List<Place> places;

    LayoutModel(Access access, List<Place> places) {
        this.access = access;
        this.places =
                places.stream().sorted(Comparator.comparingInt(Place::order)).toList();
    }

    @ModelAttribute("head")
    @org.jspecify.annotations.Nullable
    Head head(HttpServletRequest request) {
        return access.present()
                .map(visitor -> headOf(visitor, request.getRequestURI()))
                .orElse(null);
    }

    private Head headOf(Visitor visitor, String path) {
        return access.presentBranch()
                .map(branch -> new Head(
                        visitor.name(),
                        visitor.roleWordsIn(branch),
                        branch.name(),
                        visitor.branches(),
                        row(branch, path),
                        path))
                .orElseGet(() -> new Head(visitor.name(), "", "", visitor.branches(), List.of(), path));
    }

    private List<Entry> row(BranchCard branch, String path) {
        return places.stream()
                .filter(place -> place.where() == Place.Where.ROW && branch.may(place.act()))
                .map(place -> new Entry(
                        place.key(), place.href(), path.equals(place.href()) || path.startsWith(place.href() + "/")))
                .toList();
    }
}
