package breach.unmarked;

/** Lives in a package that nobody marked. */
final class Forgotten {

    private Forgotten() {}
}
