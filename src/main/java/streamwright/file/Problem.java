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
    /** One line, e.g. {@code yard.yaml:12:15: props[3].pixels: found -5; must be a whole number from 1 to 1000000}. */
    @Override
    public String toString() {
        String place = line > 0 ? file + ":" + line + ":" + column : file;
        return place + ": " + (where.isEmpty() ? "" : where + ": ") + "found " + found + "; " + wanted;
    }
}
