package org.plumbrow.calc.energy.weather;

import java.util.Locale;

/** Finds columns by the name before their unit: "GHI (W/m^2)" is "ghi". */
final class NamedColumns {

    private final CommaRow header;

    NamedColumns(CommaRow header) {
        this.header = header;
    }

    private static String plain(String name) {
        int unit = name.indexOf('(');
        return (unit < 0 ? name : name.substring(0, unit)).trim().toLowerCase(Locale.ROOT);
    }

    /** @return place of the first of these names that is there, from 0; -1 when none is */
    int find(String... names) {
        for (String name : names) {
            for (int at = 0; at < header.count(); at++) {
                if (plain(header.text(at)).equals(name)) {
                    return at;
                }
            }
        }
        return -1;
    }

    int need(String what, String... names) {
        int at = find(names);
        if (at < 0) {
            throw new Unreadable(
                    header.line(),
                    "There is no column for %s (\"%s\").".formatted(what, names[0]),
                    "Bring a file that has it, with the names of the columns in this line.");
        }
        return at;
    }
}
