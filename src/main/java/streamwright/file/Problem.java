package streamwright.file;

/**
 * One thing in a file that is wrong, or only doubtful.
 *
 * @param file as it was named
 * @param line 1-based; 0 where the file itself is the problem
 * @param column 1-based, in characters
 * @param where the way to the value, e.g. {@code props[3].pixels}; may be empty
 * @param found what stands there
 * @param wanted what would be right
 */
public record Problem(String file, int line, int column, String where, String found, String wanted) {
    private static final int LONGEST_PATH = 4096;

    /** One line, e.g. {@code yard.yaml:12:15: props[3].pixels: found -5; must be a whole number from 1 to 1000000}. */
    @Override
    public String toString() {
        // a yard or an archive may bring files of any name
        String shown = Quote.plain(file, LONGEST_PATH);
        String place = line > 0 ? shown + ":" + line + ":" + column : shown;
        return place + ": " + (where.isEmpty() ? "" : where + ": ") + "found " + found + "; " + wanted;
    }
}
