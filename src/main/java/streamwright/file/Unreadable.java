package streamwright.file;

/** Ends the parsing of a text that has no sense to go on from; never leaves the package. */
final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int line;
    private final int column;
    private final String found;
    private final String wanted;

    Unreadable(int line, int column, String found, String wanted) {
        super(found, null, false, false);
        this.line = line;
        this.column = column;
        this.found = found;
        this.wanted = wanted;
    }

    Problem in(String file) {
        return new Problem(file, line, column, "", found, wanted);
    }
}
