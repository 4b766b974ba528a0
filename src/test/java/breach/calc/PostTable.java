package breach.calc;

/** Holds nothing but constants: the one kind of class that may be long. */
final class PostTable {

    static final double[] FEET = {6, 8, 10};

    private PostTable() {}
}
