package org.plumbrow.project.edit;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.branch.Written;

/** The values of a form by the names of its fields, as they would be sent. */
record Values(Map<String, String> byName) {

    static Values of(List<Written> fields) {
        Map<String, String> byName = new LinkedHashMap<>();
        fields.forEach(field -> byName.put(field.name(), field.value()));
        return new Values(byName);
    }

    String get(String name) {
        return byName.getOrDefault(name, "");
    }

    List<String> list(String name) {
        return Arrays.stream(get(name).split(",")).filter(one -> !one.isEmpty()).toList();
    }

    /** How many rows a list of the form has. */
    int rows(String name) {
        int rows = 0;
        while (hasRow(name + "[" + rows + "].")) {
            rows++;
        }
        return rows;
    }

    private boolean hasRow(String beginning) {
        return byName.keySet().stream().anyMatch(name -> name.startsWith(beginning));
    }
}
