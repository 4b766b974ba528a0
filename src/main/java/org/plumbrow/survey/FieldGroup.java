package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fields that stand together on a part's page.
 *
 * @param row what one row is called where the group repeats ("Plane"); empty where it does not
 * @param prefix of the names in a row; empty where it does not repeat
 * @param most rows
 */
record FieldGroup(String legend, String row, String prefix, int most, List<SurveyField> fields) {

    static FieldGroup of(String legend, SurveyField... fields) {
        return new FieldGroup(legend, "", "", 1, List.of(fields));
    }

    static FieldGroup rows(String legend, String row, String prefix, int most, SurveyField... fields) {
        return new FieldGroup(legend, row, prefix, most, List.of(fields));
    }

    boolean repeats() {
        return !prefix.isEmpty();
    }

    /** Every field that a form of this part may carry. */
    List<SurveyField> all() {
        return repeats() ? rows(most) : fields;
    }

    private List<SurveyField> rows(int count) {
        List<SurveyField> all = new ArrayList<>();
        IntStream.rangeClosed(1, count).forEach(row -> all.addAll(row(row)));
        return all;
    }

    List<SurveyField> row(int number) {
        return fields.stream()
                .map(field -> field.inRow(prefix, number, row + " " + number))
                .toList();
    }

    String legend(int number) {
        return repeats() ? row + " " + number : legend;
    }
}
