package org.plumbrow.cutover.ridethrough;

import java.util.List;
import org.plumbrow.web.Option;

/** What the fields of a load offer to choose from. */
final class LoadChoices {

    private LoadChoices() {}

    static List<Option> animals() {
        return List.of(
                new Option("BROILERS", "broilers"),
                new Option("LAYERS_CAGED", "layers in cages"),
                new Option("LAYERS_FLOOR", "layers on the floor"),
                new Option("PULLETS", "pullets"),
                new Option("TURKEYS", "turkeys"),
                new Option("PIGS", "pigs from 44 lb"),
                new Option("PIGLETS", "piglets below 44 lb"),
                new Option("COWS", "dairy cows"));
    }

    static List<Option> products() {
        return List.of(new Option("FRESH", "fruit, vegetables, meat above freezing"), new Option("FROZEN", "frozen"));
    }

    static List<Option> covers() {
        return List.of(
                new Option("6.65", "one layer of film or glass"),
                new Option("4", "two layers of film with air between"));
    }

    static List<Option> freezers() {
        return List.of(
                new Option("NONE", "no freezer"),
                new Option("HALF_FULL", "freezer, half full"),
                new Option("FULL", "freezer, full"));
    }

    static List<Option> transfers() {
        return List.of(
                new Option("AUTOMATIC", "automatic transfer switch"),
                new Option("DOUBLE_THROW", "double-throw switch by hand"),
                new Option("NONE", "neither"));
    }

    static List<Option> rotations() {
        return List.of(
                new Option("SAME", "the same way, checked"),
                new Option("OPPOSITE", "the other way"),
                new Option("NOT_CHECKED", "not checked"),
                new Option("SINGLE_PHASE", "one phase only"));
    }

    static List<Option> times() {
        return List.of(
                new Option("FEEDING", "feed runs"),
                new Option("BUSINESS", "school or business hours"),
                new Option("CLOSED", "vacation: no school or business"),
                new Option("PRESENT", "somebody is there who may decide"),
                new Option("FLOCK", "catch, load-out or placement"));
    }

    static List<Option> weekdays() {
        return List.of(new Option("DAILY", "every day"), new Option("WEEKDAYS", "Monday to Friday"));
    }
}
