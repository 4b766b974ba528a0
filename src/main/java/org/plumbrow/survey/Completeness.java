package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.survey.Needs.Need;

/** What the designer still lacks: what was not read, what was asked about and not answered, photos. Pure. */
record Completeness(List<Lack> lacks) {

    Completeness {
        lacks = List.copyOf(lacks);
    }

    /**
     * One thing that is missing.
     *
     * @param path last word of the address of the page where it is filled in
     */
    record Lack(String path, String part, String sentence) {
        static Lack of(SurveyPart part, String sentence) {
            return new Lack(part.path(), part.words(), sentence);
        }
    }

    /** What lies there besides the readings. @param photos numbers of the items with a photo, or a reason for none */
    record Besides(Set<Integer> photos, List<Lack> remarks) {
        static final Besides NOTHING = new Besides(Set.of(), List.of());
    }

    static Completeness of(ProjectFacts project, SurveySheet sheet, Besides besides) {
        SurveyFacts facts = FactsReading.of(project.id(), sheet);
        List<Lack> lacks = new ArrayList<>();
        for (Need need : Needs.ALL) {
            if (need.when().test(project) && !need.there().test(facts)) {
                lacks.add(Lack.of(need.part(), need.words()));
            }
        }
        if (faultIsAsked(project, facts)) {
            lacks.add(Lack.of(SurveyPart.SERVICE, "Fault current at the service (the main is over 200 A)"));
        }
        for (SurveyPart part : SurveyPart.values()) {
            Asks.open(part, sheet.readings(part), sheet.disconnectMostFt())
                    .forEach(ask -> lacks.add(Lack.of(part, ask.sentence())));
        }
        lacks.addAll(besides.remarks);
        photos(project, besides.photos, lacks);
        return new Completeness(lacks);
    }

    private static boolean faultIsAsked(ProjectFacts project, SurveyFacts facts) {
        Double main = facts.service().mainA();
        return !project.site().supplySideTap()
                && main != null
                && main > Needs.FAULT_ASKED_ABOVE_A
                && facts.service().faultKa() == null;
    }

    static List<PhotoItem> missingPhotos(ProjectFacts project, Set<Integer> there) {
        return PhotoItem.of(project).stream()
                .filter(item -> !there.contains(item.number()))
                .toList();
    }

    private static void photos(ProjectFacts project, Set<Integer> there, List<Lack> lacks) {
        List<PhotoItem> missing = missingPhotos(project, there);
        if (!missing.isEmpty()) {
            String count = missing.size() == 1
                    ? "1 photo: " + missing.get(0).words()
                    : "%d photos of %d"
                            .formatted(missing.size(), PhotoItem.of(project).size());
            lacks.add(new Lack("photos", "Photos", count));
        }
    }

    public boolean isEnoughToDraw() {
        return lacks.isEmpty();
    }

    List<Lack> of(SurveyPart part) {
        return lacks.stream().filter(lack -> lack.path.equals(part.path())).toList();
    }
}
