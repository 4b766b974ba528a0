package breach.calc;

/** Is called a table and computes: may not be long. */
final class LazyTable {

    private LazyTable() {}

    static double feet(int row) {
        return 6 + 2.0 * row;
    }
}
