package org.plumbrow.branch.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.branch.Days;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.Written;

/**
 * What can be changed of a permit office at once.
 *
 * @param permit working days from application to permit, where they differ from the branch's table
 * @param inspection working days from request to inspection, likewise
 * @param phone may be empty
 */
public record OfficeTerms(
        String name, CodeEdition codeEdition, Optional<Days> permit, Optional<Days> inspection, String phone) {

    static OfficeTerms of(PermitOfficeFacts office) {
        return new OfficeTerms(
                office.name(), office.codeEdition(), office.permit(), office.inspection(), office.phone());
    }

    List<Written> written() {
        List<Written> all = new ArrayList<>();
        all.add(Written.of("Name", "name", name));
        all.add(Written.of("Code edition", "codeEdition", codeEdition, codeEdition.words()));
        all.addAll(written("Permit", "permit", permit));
        all.addAll(written("Inspection", "inspection", inspection));
        all.add(Written.of("Phone", "phone", phone));
        return all;
    }

    private static List<Written> written(String label, String name, Optional<Days> days) {
        return List.of(
                Written.of(
                        label + ", least days",
                        name + "Least",
                        days.map(Days::least).orElse(null)),
                Written.of(
                        label + ", usual days",
                        name + "Usual",
                        days.map(Days::usual).orElse(null)),
                Written.of(
                        label + ", most days",
                        name + "Most",
                        days.map(Days::most).orElse(null)));
    }
}
